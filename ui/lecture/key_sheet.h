// The keys of the lecture, over everything, on F1.
#pragma once

#include "ui/lecture/measures.h"
#include "ui/style/theme.h"

#include <QWidget>

namespace tailpoint {

class KeySheet : public QWidget {
    Q_OBJECT
public:
    explicit KeySheet(QWidget* parent);
    void setTheme(const Theme& theme);
    /// Over its parent's middle; as large as fits.
    void place(const Measures& measures);
    bool fits() const { return m_fits; }
    double capital() const; ///< height of a capital letter, pixels

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme* m_theme;
    double m_size = 16;
    bool m_fits = true;
};

} // namespace tailpoint
