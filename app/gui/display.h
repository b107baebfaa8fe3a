// SPDX-License-Identifier: MIT
// A window where no display is: Qt says so in lines of its own and aborts; this says it in ours and exits.
#pragma once

#include <QStringList>
#include <functional>

namespace tailpoint {

/// Stands while the application is made, one at a time. Qt's fatal line ends the process with the status that
/// `instead` returns, and nothing is said but by `instead`; where the application can be made, what Qt and
/// the libraries below it remarked on the way is said once this goes.
class InsteadOfAborting {
public:
    explicit InsteadOfAborting(std::function<int()> instead);
    ~InsteadOfAborting();
    [[noreturn]] void end(); ///< as on Qt's fatal line
    InsteadOfAborting(const InsteadOfAborting&) = delete;
    InsteadOfAborting& operator=(const InsteadOfAborting&) = delete;

private:
    static void hear(QtMsgType type, const QMessageLogContext& context, const QString& message);
    void giveBackStandardError();
    static InsteadOfAborting* s_standing; ///< Qt's handlers get no context of ours

    std::function<int()> m_instead;
    QStringList m_remarks;
    QtMessageHandler m_before;
    int m_standardError = -1, m_aside = -1; ///< libxcb writes to the descriptor itself
};

/// The words without those that Qt takes for itself ("-platform xcb", "-style=fusion", "-geometry"), which it
/// does only once it has a display.
QStringList withoutToolkitOptions(const QStringList& words);

} // namespace tailpoint
