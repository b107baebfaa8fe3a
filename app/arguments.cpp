// SPDX-License-Identifier: MIT
#include "app/arguments.h"

#include <QCommandLineParser>
#include <QRegularExpression>

#include <algorithm>
#include <utility>

namespace tailpoint {

namespace {

/// "--as" and "-o" as the parser names them: "as" and "o".
QString bare(const QString& name) {
    return name.mid(name.startsWith(QLatin1String("--")) ? 2 : 1);
}

/// A word of several letters behind a single dash is no option: not a long one with a dash too few, nor
/// several short ones together ("-help" is neither --help nor -h -e -l -p).
bool hasDashTooFew(const QString& word) {
    return word.size() > 2 && !word.startsWith(QLatin1String("--"));
}

/// Of "--as=json" "--as"; behind a single dash a word is taken as it stands.
QString optionIn(const QString& word) {
    return word.startsWith(QLatin1String("--")) ? word.section(QLatin1Char('='), 0, 0) : word;
}

QString names(const QList<Option>& known) {
    QStringList out;
    for (const Option& option : known)
        out << option.name;
    out << QStringLiteral("--help");
    return out.join(QStringLiteral(", "));
}

/// "--faded 3" and "--faded" as the parser reads them: "--faded=3", "--faded=".
QStringList withCounts(const QStringList& given, const QList<Option>& known) {
    static const QRegularExpression digits(QStringLiteral("^\\d+$"));
    QStringList words;
    bool isOver = false; // behind "--" stand names of files
    for (qsizetype i = 0; i < given.size(); ++i) {
        const auto option = std::find_if(known.begin(), known.end(), [&](const Option& one) {
            return one.mayCount && one.name == given[i];
        });
        isOver = isOver || given[i] == QLatin1String("--");
        if (isOver || option == known.end()) {
            words << given[i];
            continue;
        }
        const QString next = given.value(i + 1);
        const bool hasCount = digits.match(next).hasMatch();
        words << given[i] + QLatin1Char('=') + (hasCount ? next : QString());
        i += hasCount ? 1 : 0;
    }
    return words;
}

/// The words with Qt's parser, one more at a time: so a fault is told of the word that makes it, which the
/// parser's own words don't name ("Unknown options: e, l, p").
class GivenWords {
public:
    GivenWords(const QStringList& given, const QList<Option>& known)
        : m_given(withCounts(given, known)), m_known(known) {
        m_parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
        m_parser.addOption(QCommandLineOption(QStringList{QStringLiteral("h"), QStringLiteral("help")}));
        for (const Option& option : known)
            m_parser.addOption({bare(option.name), {}, option.flag ? QString() : QStringLiteral("value")});
    }

    std::optional<QString> fault() {
        for (qsizetype count = 1; count <= m_given.size(); ++count)
            if (m_given[count - 1].startsWith(QLatin1Char('-')))
                if (auto fault = faultOfLast(count))
                    return fault;
        if (!readFirst(m_given.size()))
            return QStringLiteral("%1 wants a value behind it").arg(m_given.back());
        return faultOfValues();
    }

    /// Precondition: there is no fault.
    Arguments arguments() const {
        Arguments out;
        out.files = m_parser.positionalArguments();
        out.help = m_parser.isSet(QStringLiteral("help"));
        for (const Option& option : m_known)
            if (m_parser.isSet(bare(option.name))) {
                out.options.insert(option.name, m_parser.value(bare(option.name)));
                if (option.repeated)
                    out.repeated.insert(option.name, m_parser.values(bare(option.name)));
            }
        return out;
    }

private:
    bool readFirst(qsizetype count) {
        return m_parser.parse(QStringList(QStringLiteral("tailpoint")) + m_given.first(count));
    }

    /// What the last of the first `count` words does wrong, where it is an option and not the value of one.
    std::optional<QString> faultOfLast(qsizetype count) {
        const QString& word = m_given[count - 1];
        const bool read = readFirst(count);
        const QStringList found = m_parser.optionNames();
        const bool isOption = found.size() > std::exchange(m_found, found.size());
        if (!m_parser.unknownOptionNames().isEmpty() || (isOption && hasDashTooFew(word)))
            return QStringLiteral("%1 is no option here; use one of %2").arg(optionIn(word), names(m_known));
        if (isOption && found.count(found.back()) > 1 && !isRepeated(found.back()))
            return QStringLiteral("%1 stands twice; take one out").arg(optionIn(word));
        if (isOption && !read && word.contains(QLatin1Char('=')))
            return QStringLiteral("%1 takes no value; take it out").arg(optionIn(word));
        return std::nullopt;
    }

    bool isRepeated(const QString& found) const {
        return std::any_of(m_known.begin(), m_known.end(), [&](const Option& option) {
            return option.repeated && bare(option.name) == found;
        });
    }

    std::optional<QString> faultOfValues() const {
        for (const Option& option : m_known) {
            const QString value = m_parser.value(bare(option.name));
            if (m_parser.isSet(bare(option.name)) && !option.values.isEmpty() &&
                !option.values.contains(value))
                return QStringLiteral("%1 knows no '%2'; use one of %3")
                    .arg(option.name, value, option.values.join(QStringLiteral(", ")));
        }
        return std::nullopt;
    }

    QStringList m_given;
    QList<Option> m_known;
    QCommandLineParser m_parser;
    qsizetype m_found = 0; ///< options in the words read so far
};

} // namespace

std::variant<Arguments, QString> parseArguments(const QStringList& given, const QList<Option>& known) {
    GivenWords words(given, known);
    if (auto fault = words.fault())
        return *fault;
    return words.arguments();
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
