// SPDX-License-Identifier: MIT
// What the board knows and says; how it looks is vote_board_paint.cpp.
#include "ui/lecture/vote_board.h"

#include "ui/lecture/vote_letters.h"
#include "ui/style/symbols.h"

#include <QKeyEvent>
#include <algorithm>

namespace tailpoint {

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
    m_poll = 0;
    m_none = m_twinFailed = false;
    begin();
}

/// With the first row of what is shown now.
void VoteBoard::begin() {
    m_chosen = 0;
    m_reason.reset();
    m_fresh = true;
    m_asksOnce = false;
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
    if (isClosed())
        return turnReason(1);
    if (ballot().takesVotes() && ballot().total(isSecond()) == 0 && !m_asksOnce) {
        m_asksOnce = true;
        return tell();
    }
    current().goOn();
    begin();
}

void VoteBoard::goBack() {
    if (isEmpty())
        return;
    if (m_reason)
        return turnReason(-1);
    current().goBack();
    begin();
}

/// What most need to hear of comes first.
std::vector<std::size_t> VoteBoard::wrongByVotes() const {
    std::vector<std::size_t> wrong;
    for (std::size_t row = 0; row < poll().choices.size(); ++row)
        if (isWrong(row))
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
    if (isClosed())
        m_reason = isWrong(row) ? std::optional(row) : std::nullopt;
    m_chosen = row;
    m_fresh = true;
    tell();
}

void VoteBoard::typeDigit(int digit) {
    const int before = m_fresh ? 0 : ballot().votes(isSecond(), m_chosen);
    current().setVotes(m_chosen, 10 * before + digit);
    m_fresh = false;
    tell();
}

void VoteBoard::eraseDigit() {
    current().setVotes(m_chosen, ballot().votes(isSecond(), m_chosen) / 10);
    m_fresh = false;
    tell();
}

void VoteBoard::nextPoll() {
    m_poll = (m_poll + 1) % m_polls.size();
    begin();
}

/// Votes for it go with it.
void VoteBoard::toggleNone() {
    if (!ballot().takesVotes())
        return;
    if (m_none)
        current().setVotes(poll().choices.size(), 0);
    m_none = !m_none;
    choose(m_none ? rows() - 1 : std::min(m_chosen, rows() - 1));
}

bool VoteBoard::typesKey(int key) {
    if (!ballot().takesVotes())
        return false;
    if (key >= Qt::Key_0 && key <= Qt::Key_9) {
        typeDigit(key - Qt::Key_0);
    } else if (key == Qt::Key_Backspace) {
        eraseDigit();
    } else if (key == Qt::Key_Delete) {
        current().setVotes(m_chosen, 0);
        m_fresh = true;
        tell();
    } else {
        return false;
    }
    return true;
}

bool VoteBoard::movesKey(int key) {
    if (key >= Qt::Key_A && key < Qt::Key_A + static_cast<int>(rows())) {
        choose(static_cast<std::size_t>(key - Qt::Key_A));
    } else if (key == Qt::Key_Down || key == Qt::Key_Up) {
        const bool down = key == Qt::Key_Down;
        if (isClosed())
            turnReason(down ? 1 : -1);
        else
            choose((m_chosen + (down ? 1 : rows() - 1)) % rows());
    } else if (key == Qt::Key_Q) {
        nextPoll();
    } else if (key == Qt::Key_X) {
        toggleNone();
    } else {
        return key >= Qt::Key_0 && key <= Qt::Key_9; // a digit out of its time does nothing
    }
    return true;
}

bool VoteBoard::takeKey(QKeyEvent* event) {
    if (isEmpty() || event->modifiers().testFlag(Qt::ControlModifier) ||
        event->modifiers().testFlag(Qt::AltModifier))
        return false;
    const bool asked = m_asksOnce;
    m_twinFailed = m_asksOnce = false;
    if (typesKey(event->key()) || movesKey(event->key()))
        return true;
    m_asksOnce = asked;
    return false;
}

QString VoteBoard::rowText(std::size_t row) const {
    if (row >= poll().choices.size())
        return tr("none of these");
    QStringList values = onScreen(poll().choices[row].text).split(QStringLiteral(" or "));
    for (QString& value : values) // a line ends between two of them
        value.replace(u' ', QChar(0x00A0));
    return values.join(QStringLiteral(" or "));
}

QString VoteBoard::countText(std::size_t row) const {
    if (!ballot().takesVotes())
        return {};
    const int votes = ballot().votes(isSecond(), row);
    if (row == m_chosen)
        return votes > 0 || !m_fresh ? QString::number(votes) : QString();
    return votes > 0 ? QStringLiteral("\u2022") : QString(); // who sees the first count follows it
}

QString VoteBoard::votesText(bool second) const {
    const int votes = ballot().total(second);
    return votes == 1 ? tr("1 vote") : tr("%1 votes").arg(votes);
}

QString VoteBoard::phaseText() const {
    if (m_twinFailed)
        return tr("No other numbers were found for this question.");
    if (m_asksOnce)
        return tr("No votes are counted yet. Space again goes on without them.");
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
    if (ballot().total(false) > 0 && ballot().total(true) > 0)
        return tr("Thin: first vote. Thick: second.");
    return ballot().total(true) > 0    ? tr("The second vote; the first was not counted.")
           : ballot().total(false) > 0 ? tr("The first vote; the second was not counted.")
                                       : tr("No votes were counted.");
}

/// Each key and what it does stay on one line.
Prose VoteBoard::keysProse() const {
    Prose keys;
    const auto add = [&](QString text) {
        text.replace(u' ', QChar(0x00A0));
        appendText(keys, (keys.pieces.empty() ? "" : "\u00A0· ") + text.toStdString());
    };
    if (isEmpty()) {
        add(tr("V: back to the steps"));
        return keys;
    }
    switch (ballot().phase()) {
    case Ballot::Phase::first:
    case Ballot::Phase::second:
        add(tr("A\u2013%1 and a number: votes").arg(letterOf(rows() - 1)));
        add(tr("Space: close the vote"));
        break;
    case Ballot::Phase::talk:
        add(tr("Space: vote again"));
        break;
    case Ballot::Phase::closed:
        add(tr("Space: the wrong ones"));
        add(tr("W: other numbers"));
        break;
    }
    if (isFirst()) {
        add(tr("X: none of these"));
        if (m_polls.size() > 1) {
            add(tr("Q: ask for "));
            keys.pieces.emplace_back(symbol(m_polls[(m_poll + 1) % m_polls.size()].symbol, {}));
        }
    }
    add(tr("V: back"));
    return keys;
}

QString VoteBoard::keysText() const {
    return QString::fromStdString(toText(keysProse()));
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
    QStringList lines{tr("%1 = ?").arg(symbol), QString::fromStdString(toText(poll().asked)), phaseText()};
    for (std::size_t row = 0; row < rows(); ++row) {
        QString line = tr("%1: %2").arg(letterOf(row), rowText(row).replace(QChar(0x00A0), u' '));
        if (const auto share = ballot().share(true, row))
            line += QStringLiteral(", ") + percent(*share);
        if (const auto before = ballot().share(false, row))
            line = tr("%1, %2 before").arg(line, percent(*before));
        if (isClosed() && isRight(row))
            line += tr(", right");
        lines << line;
    }
    return lines.join(u'\n');
}

void VoteBoard::tell() {
    setAccessibleName(plainText());
    update();
}

} // namespace tailpoint
