#include "app/arguments.h"

#include <algorithm>

namespace tailpoint {

namespace {

const Option* optionNamed(const QString& name, const QList<Option>& known) {
    const auto it =
        std::find_if(known.begin(), known.end(), [&](const Option& option) { return option.name == name; });
    return it == known.end() ? nullptr : &*it;
}

QString names(const QList<Option>& known) {
    QStringList out;
    for (const Option& option : known)
        out << option.name;
    out << QStringLiteral("--help");
    return out.join(QStringLiteral(", "));
}

/// One option at given[at]; moves `at` onto its value. The fault, if any.
std::optional<QString> takeOption(const QStringList& given, qsizetype& at, const QList<Option>& known,
                                  Arguments& out) {
    const qsizetype equals =
        given[at].startsWith(QLatin1String("--")) ? given[at].indexOf(QLatin1Char('=')) : -1;
    const QString name = given[at].left(equals);
    const Option* option = optionNamed(name, known);
    if (!option)
        return QStringLiteral("%1 is no option here; use one of %2").arg(name, names(known));
    if (out.options.contains(name))
        return QStringLiteral("%1 stands twice; take one out").arg(name);
    if (option->flag && equals >= 0)
        return QStringLiteral("%1 takes no value; take it out").arg(name);
    if (option->flag) {
        out.options.insert(name, QStringLiteral("yes"));
        return std::nullopt;
    }
    if (equals < 0 && at + 1 >= given.size())
        return QStringLiteral("%1 wants a value behind it").arg(name);
    const QString value = equals < 0 ? given[++at] : given[at].mid(equals + 1);
    if (!option->values.isEmpty() && !option->values.contains(value))
        return QStringLiteral("%1 knows no '%2'; use one of %3")
            .arg(name, value, option->values.join(QStringLiteral(", ")));
    out.options.insert(name, value);
    return std::nullopt;
}

} // namespace

std::variant<Arguments, QString> parseArguments(const QStringList& given, const QList<Option>& known) {
    Arguments out;
    bool optionsEnded = false;
    for (qsizetype at = 0; at < given.size(); ++at) {
        const QString& word = given[at];
        if (optionsEnded || !word.startsWith(QLatin1Char('-')) || word == QLatin1String("-")) {
            out.files << word;
        } else if (word == QLatin1String("--")) {
            optionsEnded = true;
        } else if (word == QLatin1String("--help") || word == QLatin1String("-h")) {
            out.help = true;
        } else if (auto fault = takeOption(given, at, known, out)) {
            return *fault;
        }
    }
    return out;
}

std::optional<int> wholeNumber(const QString& text, int least, int most) {
    bool read = false;
    const int value = text.toInt(&read);
    return read && value >= least && value <= most ? std::optional(value) : std::nullopt;
}

std::optional<double> positiveNumber(const QString& text, double most) {
    bool read = false;
    const double value = text.toDouble(&read); // the C locale's: a point as decimal mark
    return read && value > 0 && value <= most ? std::optional(value) : std::nullopt;
}

} // namespace tailpoint
