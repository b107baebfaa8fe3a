#include "ui/lecture/vote_board.h"

#include "ui/style/symbols.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kTitle = 1.22, kRow = 1.05, kRowHeight = 2.05, kKeys = 1.0; ///< by the least size, ems
constexpr double kWords = 1.03, kFormula = 1.1, kLineHeight = 1.28;

QString letterOf(std::size_t row) {
    return QString(QChar(u'A' + static_cast<char16_t>(row)));
}

QString percent(double share) {
    return VoteBoard::tr("%1 %").arg(qRound(100 * share));
}

} // namespace

VoteBoard::VoteBoard(QWidget* parent) : QWidget(parent), m_theme(&themeOf(ThemeName::slate)) {
    setObjectName(QStringLiteral("voteBoard"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    hide();
}

void VoteBoard::setMeasures(const Measures& measures) {
    m_measures = measures;
    update();
}

void VoteBoard::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

void VoteBoard::setPolls(std::vector<Poll> polls) {
    m_polls = std::move(polls);
    m_ballots.clear();
    for (const Poll& poll : m_polls)
        m_ballots.emplace_back(poll.choices.size() + 1);
    m_poll = m_chosen = 0;
    m_reason.reset();
    m_none = m_twinFailed = false;
    m_fresh = true;
    tell();
}

void VoteBoard::setTwinFailed(bool failed) {
    m_twinFailed = failed;
    tell();
}

void VoteBoard::goOn() {
    m_twinFailed = false;
    if (isEmpty())
        return;
    if (ballot().phase() == Ballot::Phase::closed)
        return turnReason(1);
    current().goOn();
    m_chosen = 0;
    m_fresh = true;
    tell();
}

void VoteBoard::goBack() {
    if (isEmpty())
        return;
    if (m_reason)
        return turnReason(-1);
    current().goBack();
    m_chosen = 0;
    m_fresh = true;
    tell();
}

/// What most need to hear of comes first.
std::vector<std::size_t> VoteBoard::wrongByVotes() const {
    std::vector<std::size_t> wrong;
    for (std::size_t row = 0; row < poll().choices.size(); ++row)
        if (!poll().choices[row].isRight())
            wrong.push_back(row);
    std::stable_sort(wrong.begin(), wrong.end(), [&](std::size_t a, std::size_t b) {
        return ballot().votes(true, a) > ballot().votes(true, b);
    });
    return wrong;
}

/// The shares, then one reason after another, then the shares again.
void VoteBoard::turnReason(int by) {
    const std::vector<std::size_t> wrong = wrongByVotes();
    const auto count = static_cast<int>(wrong.size());
    const int at = m_reason
                       ? static_cast<int>(std::find(wrong.begin(), wrong.end(), *m_reason) - wrong.begin())
                       : (by > 0 ? -1 : count);
    const int next = at + by;
    m_reason =
        next < 0 || next >= count ? std::nullopt : std::optional(wrong[static_cast<std::size_t>(next)]);
    tell();
}

void VoteBoard::choose(std::size_t row) {
    if (row >= rows())
        return;
    if (ballot().phase() == Ballot::Phase::closed)
        m_reason =
            row < poll().choices.size() && !poll().choices[row].isRight() ? std::optional(row) : std::nullopt;
    m_chosen = row;
    m_fresh = true;
    tell();
}

void VoteBoard::typeDigit(int digit) {
    const bool second = ballot().phase() == Ballot::Phase::second;
    const int before = m_fresh ? 0 : ballot().votes(second, m_chosen);
    current().setVotes(m_chosen, 10 * before + digit);
    m_fresh = false;
    tell();
}

void VoteBoard::nextPoll() {
    m_poll = (m_poll + 1) % m_polls.size();
    m_chosen = 0;
    m_reason.reset();
    m_fresh = true;
    tell();
}

/// Votes for it go with it.
void VoteBoard::toggleNone() {
    if (!ballot().takesVotes())
        return;
    if (m_none)
        current().setVotes(poll().choices.size(), 0);
    m_none = !m_none;
    m_chosen = std::min(m_chosen, rows() - 1);
    tell();
}

bool VoteBoard::takeKey(QKeyEvent* event) {
    if (isEmpty() || event->modifiers().testFlag(Qt::ControlModifier) ||
        event->modifiers().testFlag(Qt::AltModifier))
        return false;
    const int key = event->key();
    m_twinFailed = false;
    if (key >= Qt::Key_A && key < Qt::Key_A + static_cast<int>(rows())) {
        choose(static_cast<std::size_t>(key - Qt::Key_A));
    } else if (key >= Qt::Key_0 && key <= Qt::Key_9) {
        typeDigit(key - Qt::Key_0);
    } else if (key == Qt::Key_Backspace || key == Qt::Key_Delete) {
        current().setVotes(m_chosen, 0);
        m_fresh = true;
        tell();
    } else if (key == Qt::Key_Down || key == Qt::Key_Up) {
        const bool down = key == Qt::Key_Down;
        if (ballot().phase() == Ballot::Phase::closed)
            turnReason(down ? 1 : -1);
        else
            choose((m_chosen + (down ? 1 : rows() - 1)) % rows());
    } else if (key == Qt::Key_Q) {
        nextPoll();
    } else if (key == Qt::Key_X) {
        toggleNone();
    } else {
        return false;
    }
    return true;
}

QString VoteBoard::rowText(std::size_t row) const {
    return row < poll().choices.size() ? onScreen(poll().choices[row].text) : tr("none of these");
}

QString VoteBoard::votesText(bool second) const {
    return tr("%n vote(s)", nullptr, ballot().total(second))
        .replace(QStringLiteral("(s)"), ballot().total(second) == 1 ? QString() : QStringLiteral("s"));
}

QString VoteBoard::phaseText() const {
    if (m_twinFailed)
        return tr("No other numbers were found for this question.");
    switch (ballot().phase()) {
    case Ballot::Phase::first:
        return tr("First vote: %1").arg(votesText(false));
    case Ballot::Phase::talk:
        return tr("Now talk: find somebody who chose otherwise, and say why.");
    case Ballot::Phase::second:
        return tr("Second vote: %1").arg(votesText(true));
    case Ballot::Phase::closed:
        break;
    }
    return tr("Thin: the first vote. Thick: the second.");
}

QString VoteBoard::keysText() const {
    QStringList keys;
    const QString last = isEmpty() ? QString() : letterOf(rows() - 1);
    if (isEmpty())
        return tr("V: back to the steps");
    switch (ballot().phase()) {
    case Ballot::Phase::first:
    case Ballot::Phase::second:
        keys << tr("A\u2013%1 and a number: votes").arg(last) << tr("Space: close the vote");
        break;
    case Ballot::Phase::talk:
        keys << tr("Space: vote again");
        break;
    case Ballot::Phase::closed:
        keys << tr("Space: the wrong ones") << tr("W: other numbers");
        break;
    }
    if (ballot().phase() == Ballot::Phase::first) {
        keys << tr("X: none of these");
        if (m_polls.size() > 1)
            keys << tr("Q: ask for %1")
                        .arg(QString::fromStdString(inPrint(m_polls[(m_poll + 1) % m_polls.size()].symbol)));
    }
    keys << tr("V: back");
    for (QString& key : keys) // a line ends between two of them
        key.replace(u' ', QChar(0x00A0));
    return keys.join(QStringLiteral(" \u00B7 "));
}

QString VoteBoard::plainText() const {
    if (isEmpty())
        return tr("Nothing here can be put to a vote: there is no answer, or no usual slip changes it.");
    const QString symbol = QString::fromStdString(inPrint(poll().symbol));
    if (m_reason) {
        const PollChoice& choice = poll().choices[*m_reason];
        QStringList lines{tr("%1 = %2").arg(symbol, onScreen(choice.text)),
                          QString::fromStdString(toText(choice.sentence))};
        for (const ChangedLine& line : choice.lines)
            lines << QString::fromStdString(toText(line, Minus::typographic));
        return lines.join(u'\n');
    }
    QStringList lines{tr("%1 = ?").arg(symbol), phaseText()};
    for (std::size_t row = 0; row < rows(); ++row) {
        QString line = tr("%1: %2").arg(letterOf(row), rowText(row));
        if (const auto share = ballot().share(true, row)) {
            line += QStringLiteral(", ") + percent(*share);
            if (const auto before = ballot().share(false, row))
                line = tr("%1, %2 before").arg(line, percent(*before));
        }
        if (ballot().phase() == Ballot::Phase::closed && row < poll().choices.size() &&
            poll().choices[row].isRight())
            line += tr(", right");
        lines << line;
    }
    return lines.join(u'\n');
}

void VoteBoard::tell() {
    setAccessibleName(plainText());
    update();
}

QFont VoteBoard::font(double factor, bool bold) const {
    QFont font = sansFont();
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setPointSizeF(factor * m_measures.sans * 72 / logicalDpiY());
    font.setWeight(bold ? QFont::DemiBold : QFont::Normal);
    return font;
}

/// One bar for each vote: the first quiet, the second in ink; the right one's in the sum's colour.
void VoteBoard::paintShares(QPainter& painter, std::size_t row, double y) const {
    const double em = m_measures.sans, left = m_measures.margin, wide = m_measures.textWidth() - 4.2 * em;
    const bool right = row < poll().choices.size() && poll().choices[row].isRight();
    const auto bar = [&](bool second, double top, double thick, const QColor& colour) {
        if (const auto share = ballot().share(second, row)) {
            painter.fillRect(QRectF(left, top, wide * *share, thick), colour);
            return percent(*share);
        }
        return QString();
    };
    bar(false, y + 0.05 * em, 0.14 * em, m_theme->quietInk);
    const QString told = bar(true, y + 0.27 * em, 0.3 * em, right ? m_theme->sum : m_theme->ink);
    painter.setFont(font(1));
    painter.setPen(m_theme->ink);
    painter.drawText(QRectF(left + wide, y - 0.45 * em, 4.2 * em, 1.4 * em),
                     Qt::AlignRight | Qt::AlignVCenter, told);
}

void VoteBoard::paintRow(QPainter& painter, std::size_t row, double& y) const {
    const double em = m_measures.sans, left = m_measures.margin, wide = m_measures.textWidth();
    const bool closed = ballot().phase() == Ballot::Phase::closed;
    const bool right = closed && row < poll().choices.size() && poll().choices[row].isRight();
    const double height = kRowHeight * em;
    const QRectF box(left, y, wide, height * 0.9);
    if (row == m_chosen && ballot().takesVotes()) {
        painter.setPen(QPen(m_theme->quietInk, std::max(1.0, m_measures.height / 360)));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box.adjusted(-0.3 * em, 0, 0.3 * em, 0));
    }
    painter.setPen(m_theme->quietInk);
    painter.setFont(font(kRow, true));
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, letterOf(row));
    painter.setPen(right ? m_theme->sum : m_theme->ink);
    painter.setFont(font(kRow, right));
    painter.drawText(box.adjusted(1.5 * em, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, rowText(row));
    painter.setFont(font(1));
    if (closed) {
        painter.setPen(m_theme->sum);
        painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, right ? tr("right") : QString());
    } else if (ballot().takesVotes()) {
        // Dots for digits: who sees the first count follows it.
        const int votes = ballot().votes(ballot().phase() == Ballot::Phase::second, row);
        const QString dots(votes == 0 ? 0 : QString::number(votes).size(), QChar(0x2022));
        painter.setPen(m_theme->quietInk);
        painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, dots);
    }
    y += height;
    if (closed) {
        paintShares(painter, row, y);
        y += 0.8 * em;
    }
}

/// What of a slip's lines is set, from all of it to the least: the line where it happens, the right one in
/// symbols, the sentence alone.
std::vector<std::vector<VoteBoard::Line>> VoteBoard::layoutsOf(const PollChoice& choice) {
    std::vector<std::vector<Line>> layouts(1);
    for (const ChangedLine& line : choice.lines) {
        layouts[0].push_back({line.changed, false});
        if (line.right)
            layouts[0].push_back({*line.right, true});
    }
    if (choice.lines.empty())
        return layouts;
    const ChangedLine& first = choice.lines.front();
    const auto add = [&](const Working& changed, std::optional<Working> right) {
        layouts.push_back({{changed, false}});
        if (right)
            layouts.back().push_back({std::move(*right), true});
    };
    const auto inSymbols = [](Working working) {
        if (working.general)
            working.substituted = working.value = std::nullopt;
        return working;
    };
    const auto right = first.right ? std::optional(inSymbols(*first.right)) : std::nullopt;
    add(first.changed, first.right);
    add(first.changed, right);
    add(inSymbols(first.changed), right);
    add(inSymbols(first.changed), std::nullopt);
    layouts.emplace_back();
    return layouts;
}

/// Where a wrong number comes from: as much and as large as there is room for.
void VoteBoard::paintReason(QPainter& painter, double& y, double bottom) const {
    const PollChoice& choice = poll().choices[*m_reason];
    const double em = m_measures.sans, left = m_measures.margin, wide = m_measures.textWidth();
    const auto layouts = layoutsOf(choice);
    for (const std::vector<Line>& layout : layouts)
        for (const double factor : {1.25, 1.16, 1.08, 1.0}) {
            std::vector<std::pair<Setting, QColor>> set;
            set.emplace_back(setProse(choice.sentence, font(factor),
                                      {factor * kWords * m_measures.serif, logicalDpiY()}, wide, kLineHeight),
                             m_theme->ink);
            for (const Line& line : layout) {
                if (line.isRight)
                    set.emplace_back(setProse({{inWords(tr("Right:").toStdString())}}, font(factor),
                                              {factor * kWords * m_measures.serif, logicalDpiY()}, wide,
                                              kLineHeight),
                                     m_theme->quietInk);
                for (Setting& row : setWorkingByLine(
                         line.working, {factor * kFormula * m_measures.serif, logicalDpiY()}, wide))
                    set.emplace_back(std::move(row), line.isRight ? m_theme->sum : m_theme->warning);
            }
            double height = 0;
            for (const auto& [setting, colour] : set)
                height += setting.height() + 0.35 * em;
            const bool isLeast = &layout == &layouts.back() && factor == 1.0;
            if (y + height > bottom && !isLeast)
                continue;
            for (const auto& [setting, colour] : set) {
                painter.setPen(colour);
                setting.paint(painter, {left, y + setting.ascent});
                y += setting.height() + 0.35 * em;
            }
            return;
        }
}

void VoteBoard::paintAsked(QPainter& painter, const Formula& asked, double& y) const {
    const Setting set = setFormula(related(symbol(poll().symbol, {}), Relation::equal, asked),
                                   {1.7 * m_measures.serif, logicalDpiY()});
    painter.setPen(m_theme->ink);
    set.paint(painter, {m_measures.margin, y + set.ascent});
    y += set.height() + 0.5 * m_measures.sans;
}

double VoteBoard::keysTop() const {
    const QRectF room(0, 0, m_measures.textWidth(), m_measures.height);
    return height() - QFontMetricsF(font(kKeys)).boundingRect(room, Qt::TextWordWrap, keysText()).height() -
           0.4 * m_measures.sans;
}

double VoteBoard::paintKeys(QPainter& painter) const {
    const double top = keysTop();
    painter.setFont(font(kKeys));
    painter.setPen(m_theme->quietInk);
    painter.drawText(QRectF(m_measures.margin, top, m_measures.textWidth(), height() - top), Qt::TextWordWrap,
                     keysText());
    return top;
}

void VoteBoard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), m_theme->panel);
    const double em = m_measures.sans, left = m_measures.margin, wide = m_measures.textWidth();
    const auto words = [&](const QString& text, const QFont& font, const QColor& colour, double& y) {
        const QRectF room(left, y, wide, height());
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(room, Qt::TextWordWrap, text);
        y += QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap, text).height();
    };
    double y = m_measures.margin;
    const double bottom = paintKeys(painter) - 0.4 * em;
    if (isEmpty()) {
        words(plainText(), font(kTitle), m_theme->ink, y);
        m_lowest = y;
        return;
    }
    if (m_reason) {
        paintAsked(painter, inWords(onScreen(poll().choices[*m_reason].text).toStdString()), y);
        paintReason(painter, y, bottom);
        m_lowest = y;
        return;
    }
    paintAsked(painter, inWords("?"), y);
    words(phaseText(), font(1), m_theme->quietInk, y);
    y += 0.6 * em;
    for (std::size_t row = 0; row < rows(); ++row)
        paintRow(painter, row, y);
    m_lowest = y;
}

} // namespace tailpoint
