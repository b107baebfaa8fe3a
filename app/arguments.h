// SPDX-License-Identifier: MIT
// What stands behind a verb: options that the verb knows, and names of files.
#pragma once

#include <QMap>
#include <QString>
#include <QStringList>
#include <optional>
#include <variant>

namespace tailpoint {

/// An option and the values it takes. Empty `values`: any; `flag`: none; `repeated`: it may stand several
/// times; `mayCount`: a whole number, or none.
struct Option {
    QString name; ///< "--as", "-o"
    QStringList values;
    bool flag = false;
    bool repeated = false;
    bool mayCount = false;
};

struct Arguments {
    QStringList files;
    QMap<QString, QString> options; ///< of one that stands several times the last
    QMap<QString, QStringList> repeated;
    bool help = false;
    bool has(const QString& option) const { return options.contains(option); }
    QString value(const QString& option, const QString& otherwise = {}) const {
        return options.value(option, otherwise);
    }
};

/// "--as json" or "--as=json"; what stands behind an option is its value, with a dash too; "--" ends the
/// options. No option stands twice but a `repeated` one, and none of several letters behind a single dash. A
/// fault is one line with the mend.
std::variant<Arguments, QString> parseArguments(const QStringList& given, const QList<Option>& known);

/// Whole number in [least, most], or a positive number; empty: it isn't.
std::optional<int> wholeNumber(const QString& text, int least, int most);
std::optional<double> positiveNumber(const QString& text, double most);

} // namespace tailpoint
