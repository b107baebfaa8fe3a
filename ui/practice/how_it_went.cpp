// SPDX-License-Identifier: MIT
#include "ui/practice/how_it_went.h"

#include "core/practice/families.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <map>

namespace tailpoint {

namespace {

struct Went {
    Q_DECLARE_TR_FUNCTIONS(Went)
};

bool isRight(const RecordEntry& entry) {
    return entry.verdict == Verdict::right || entry.verdict == Verdict::rounded;
}

struct Counts {
    int asked = 0, right = 0, examples = 0;
    void add(const RecordEntry& entry) {
        ++asked;
        examples += entry.lastHint ? 1 : 0;
        right += !entry.lastHint && isRight(entry) ? 1 : 0;
    }
};

QString countWords(const Counts& counts) {
    const auto [asked, right, examples] = counts;
    if (asked == 0)
        return Went::tr("Nothing has been answered in this sitting yet.");
    QStringList parts;
    if (right > 0)
        parts << Went::tr("%1 right at once").arg(right);
    if (asked - right - examples > 0)
        parts << Went::tr("%1 not right at once").arg(asked - right - examples);
    if (examples > 0)
        parts << Went::tr("%1 as an example").arg(examples);
    const QString all = parts.join(QStringLiteral(", "));
    return asked == 1 ? Went::tr("One question: %1.").arg(all)
                      : Went::tr("%1 questions: %2.").arg(QString::number(asked), all);
}

/// Behind what came of the first answer.
QString triedWords(const RecordEntry& entry, const QString& first) {
    return entry.cameRight   ? Went::tr("%1; right at try %2").arg(first).arg(entry.tries)
           : entry.tries > 1 ? Went::tr("%1; %2 tries").arg(first).arg(entry.tries)
                             : first;
}

QString outcomeWords(const RecordEntry& entry) {
    if (entry.worked == WorkedAs::flawed)
        return Went::tr("an example, its slip found");
    if (entry.worked == WorkedAs::faded)
        return entry.blank == 1 ? Went::tr("an example, one line filled in")
                                : Went::tr("an example, %1 lines filled in").arg(entry.blank);
    if (entry.lastHint)
        return Went::tr("an example");
    if (entry.verdict == Verdict::right)
        return Went::tr("right");
    if (entry.verdict == Verdict::rounded)
        return Went::tr("right but for rounding");
    return triedWords(entry, entry.slips.empty()
                                 ? Went::tr("not right")
                                 : Went::tr("not right: %1").arg(slipWords(entry.slips.front())));
}

QDateTime timeOf(const RecordEntry& entry) {
    return QDateTime::fromString(text(entry.when), Qt::ISODate).toLocalTime();
}

/// The last of the sittings before, a line each.
QStringList earlierSittings(const PracticeRecord& record, int sitting) {
    constexpr qsizetype most = 10;
    std::map<int, std::pair<Counts, QDateTime>> sittings;
    for (const RecordEntry& entry : record.entries)
        if (entry.sitting < sitting) {
            auto& [counts, begun] = sittings[entry.sitting];
            if (counts.asked == 0)
                begun = timeOf(entry);
            counts.add(entry);
        }
    QStringList lines;
    for (const auto& [number, one] : sittings) {
        const QString words = countWords(one.first);
        lines << (one.second.isValid() ? QLocale().toString(one.second.date(), QLocale::ShortFormat) +
                                             QStringLiteral("  ") + words
                                       : words);
    }
    return lines.mid(std::max<qsizetype>(0, lines.size() - most));
}

QString lineOf(const RecordEntry& entry) {
    const FamilyEntry* family = familyNamed(entry.problem.family);
    const QString title = family != nullptr ? text(family->title) : text(entry.problem.family);
    const QDateTime when = timeOf(entry);
    const QString line =
        Went::tr("%1, level %2: %3").arg(title).arg(entry.problem.level).arg(outcomeWords(entry));
    return when.isValid() ? when.toString(QStringLiteral("HH:mm  ")) + line : line;
}

} // namespace

QString slipWords(const std::string& id) {
    return text(slipName(id));
}

HowItWent howItWent(const PracticeRecord& record, int sitting) {
    HowItWent went;
    Counts counts;
    const std::vector<std::string> gone = slipsGone(record);
    for (const std::string& slip : gone)
        went.gone << slipWords(slip);
    for (const RecordEntry& entry : record.entries) {
        for (const std::string& slip : entry.slips)
            if (const QString words = slipWords(slip);
                std::find(gone.begin(), gone.end(), slip) == gone.end() && !went.left.contains(words))
                went.left << words;
        if (entry.sitting != sitting)
            continue;
        counts.add(entry);
        went.asked << lineOf(entry);
    }
    went.count = countWords(counts);
    went.earlier = earlierSittings(record, sitting);
    return went;
}

} // namespace tailpoint
