// SPDX-License-Identifier: MIT
// The manual and the three shells' completions know every option of every verb, and the words that it takes.
#include "tests/whole/verbs/driver.h"
#include "tests/whole/verbs/tools.h"

#include <QFileInfo>
#include <QRegularExpression>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QString kCompletions = QStringLiteral(TAILPOINT_SOURCE "/resources/completions/");
const QStringList kVerbs{QStringLiteral("report"), QStringLiteral("figure"), QStringLiteral("sweep"),
                         QStringLiteral("mark"), QStringLiteral("problems")};

/// As the verb itself names them when it is given one that it doesn't know.
QStringList optionsOf(const QString& verb) {
    const QString told = QString::fromUtf8(run({verb, QStringLiteral("--no-such-option")}).err);
    const QString list = told.section(QStringLiteral("use one of "), 1).trimmed();
    return list.split(QStringLiteral(", "), Qt::SkipEmptyParts);
}

/// The words of an option that takes certain ones alone, as it names them when it is given another.
QStringList wordsOf(const QString& verb, const QString& option) {
    const QString told =
        QString::fromUtf8(run({verb, QStringLiteral("-"), option, QStringLiteral("no-such-word")}, "{}").err);
    if (!told.contains(QStringLiteral("knows no")))
        return {};
    return told.section(QStringLiteral("use one of "), 1).trimmed().split(QStringLiteral(", "));
}

/// Our program is the one that the shells' files ask for the families.
Environment withOurProgram() {
    const QString folder = QFileInfo(QStringLiteral(TAILPOINT_BINARY)).path();
    return {{QStringLiteral("PATH"), folder + u':' + QString::fromLocal8Bit(qgetenv("PATH"))}};
}

/// As the list of the verb has them, one at the beginning of a line.
QStringList families() {
    QStringList names;
    static const QRegularExpression name(QStringLiteral("^([a-z-]+): "), QRegularExpression::MultilineOption);
    const Ran listed = run({QStringLiteral("problems"), QStringLiteral("--list")});
    for (auto found = name.globalMatch(QString::fromUtf8(listed.out)); found.hasNext();)
        names << found.next().captured(1);
    return names;
}

QStringList lines(const QByteArray& text) {
    return QString::fromUtf8(text).split(u'\n', Qt::SkipEmptyParts);
}

class Completion : public Verbs {};

TEST_F(Completion, TheVerbsThemselvesSayWhatTheyTake) {
    for (const QString& verb : kVerbs) {
        EXPECT_TRUE(optionsOf(verb).contains(QStringLiteral("--as")) || verb == QStringLiteral("figure"))
            << verb.toStdString();
        EXPECT_TRUE(optionsOf(verb).contains(QStringLiteral("-o"))) << verb.toStdString();
    }
    EXPECT_EQ(wordsOf(QStringLiteral("report"), QStringLiteral("--rounding")).join(u' ').toStdString(),
              "full hand");
}

TEST_F(Completion, TheManualHasEveryOption) {
    const QString manual =
        QString::fromUtf8(bytesOf(QStringLiteral(TAILPOINT_SOURCE "/resources/desktop/tailpoint.1.in")));
    for (const QString& verb : kVerbs) {
        const QString part =
            manual.section(QStringLiteral(".Ss ") + verb + u'\n', 1).section(QStringLiteral("\n.S"), 0, 0);
        for (QString option : optionsOf(verb)) {
            if (option == QStringLiteral("--help"))
                continue; // said once, of all
            option.replace(QStringLiteral("--"), QStringLiteral("\\-"))
                .replace(QRegularExpression(QStringLiteral("^-")), QString());
            EXPECT_TRUE(QRegularExpression(QStringLiteral("Fl ") + QRegularExpression::escape(option) +
                                           QStringLiteral("\\b"))
                            .match(part)
                            .hasMatch())
                << verb.toStdString() << ' ' << option.toStdString();
        }
    }
}

TEST_F(Completion, BashOffersThem) {
    const auto offered = [](const QStringList& typed) {
        const QString script =
            QStringLiteral("source '%1tailpoint.bash'; COMP_WORDS=(tailpoint \"$@\"); COMP_CWORD=$#; "
                           "_tailpoint; printf '%s\\n' \"${COMPREPLY[@]}\"")
                .arg(kCompletions);
        return lines(judged("bash", QStringList{QStringLiteral("-c"), script, QStringLiteral("bash")} + typed,
                            withOurProgram())
                         .said);
    };
    ASSERT_GE(families().size(), 11);
    EXPECT_EQ(offered({QStringLiteral("problems"), QStringLiteral("--family"), {}}), families());
    EXPECT_EQ(offered({QStringLiteral("re")}), QStringList{QStringLiteral("report")});
    for (const QString& verb : kVerbs) {
        QStringList options = offered({verb, QStringLiteral("-")}), own = optionsOf(verb);
        options.sort();
        own.sort();
        EXPECT_EQ(options.join(u' ').toStdString(), own.join(u' ').toStdString()) << verb.toStdString();
        for (const QString& option : own)
            if (const QStringList words = wordsOf(verb, option); !words.isEmpty()) {
                EXPECT_EQ(offered({verb, option, {}}).join(u' ').toStdString(),
                          words.join(u' ').toStdString())
                    << verb.toStdString() << ' ' << option.toStdString();
            }
    }
}

TEST_F(Completion, FishOffersThem) {
    NEEDS_TOOL("fish");
    Environment environment = withOurProgram();
    environment.insert(QStringLiteral("HOME"), m_folder.path());
    const auto offered = [&](const QString& typed) {
        const QString script =
            QStringLiteral("source '%1tailpoint.fish'; complete -C \"%2\"").arg(kCompletions, typed);
        QStringList words;
        for (const QString& line :
             lines(judged("fish", {QStringLiteral("--no-config"), QStringLiteral("-c"), script}, environment)
                       .said))
            words << line.section(u'\t', 0, 0);
        return words;
    };
    const QStringList kinds = offered(QStringLiteral("tailpoint problems --family "));
    for (const QString& family : families())
        EXPECT_TRUE(kinds.contains(family)) << family.toStdString();
    for (const QString& verb : kVerbs) {
        const QStringList options = offered(QStringLiteral("tailpoint %1 -").arg(verb));
        for (const QString& option : optionsOf(verb)) {
            EXPECT_TRUE(options.contains(option)) << verb.toStdString() << ' ' << option.toStdString();
            const QStringList words = wordsOf(verb, option);
            const QStringList told =
                words.isEmpty() ? words : offered(QStringLiteral("tailpoint %1 %2 ").arg(verb, option));
            for (const QString& word : words)
                EXPECT_TRUE(told.contains(word))
                    << verb.toStdString() << ' ' << option.toStdString() << ' ' << word.toStdString();
        }
    }
}

/// zsh completes only at a terminal: here its file is held to its grammar and to the words.
TEST_F(Completion, ZshsFileNamesThem) {
    const QString file = kCompletions + QStringLiteral("_tailpoint");
    const QString all = QString::fromUtf8(bytesOf(file));
    for (const QString& verb : kVerbs) {
        const QString part = all.section(QStringLiteral("_tailpoint_%1() {").arg(verb), 1)
                                 .section(QStringLiteral("\n}"), 0, 0);
        for (const QString& option : optionsOf(verb)) {
            EXPECT_TRUE(part.contains(option + u'[')) << verb.toStdString() << ' ' << option.toStdString();
            if (const QStringList words = wordsOf(verb, option); !words.isEmpty()) {
                EXPECT_TRUE(part.contains(u'(' + words.join(u' ') + u')'))
                    << verb.toStdString() << ' ' << option.toStdString();
            }
        }
    }
    NEEDS_TOOL("zsh");
    const Judged read = judged("zsh", {QStringLiteral("-n"), file});
    EXPECT_EQ(read.status, 0) << read.said.toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
