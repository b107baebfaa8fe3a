// SPDX-License-Identifier: MIT
// The keys of the lecture, over everything, on F1.
#pragma once

#include "ui/lecture/measures.h"
#include "ui/style/theme.h"

#include <QWidget>
#include <utility>

namespace tailpoint {

class KeySheet : public QWidget {
    Q_OBJECT
public:
    explicit KeySheet(QWidget* parent);
    /// What has keys of its own now.
    struct Kind {
        bool voting = false, lesson = false;
        bool notes = false;      ///< of a lesson, for who speaks: offered here
        bool tolerances = false; ///< there are some, which can be left out
    };
    void setKind(const Kind& kind);
    QString text() const; ///< all rows, "key: what it does"
    void setTheme(const Theme& theme);
    /// Over its parent's middle; as large as fits.
    void place(const Measures& measures);
    bool fits() const { return m_fits; }
    double capital() const; ///< height of a capital letter, pixels

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    using Row = std::pair<QString, QString>;
    QList<Row> rows() const;
    QSizeF columnsOf(double pixels) const;
    QSizeF sizeOf(double pixels) const;
    const Theme* m_theme;
    Kind m_kind;
    double m_size = 16;
    bool m_fits = true;
};

} // namespace tailpoint
