// SPDX-License-Identifier: MIT
#include "app/gui/feedback.h"

#include "ui/marking/feedback_names.h"

#include <QDir>
#include <QFileInfo>

namespace tailpoint {

QString FeedbackPages::prepare(const QString& folder, const People& people, const QStringList& otherOutputs,
                               const QList<Input>& inputs) {
    if (folder.isNull())
        return {};
    m_folder = folder;
    const QFileInfo info(folder);
    if (info.exists() && !info.isDir())
        return folder + QStringLiteral(": is no folder; name one for the pages");
    FeedbackNames names;
    for (const auto& [who, line] : people)
        m_paths << QDir(folder).filePath(names.next(who, line));
    for (const QString& path : info.exists() ? m_paths : QStringList())
        for (const QString& other : otherOutputs)
            if (const QString fault = faultOfOutputs({path, other}, inputs); !fault.isEmpty())
                return fault;
    if (!info.exists() && !QDir().mkdir(folder))
        return folder + QStringLiteral(": can't be made; make the folder first or name another");
    return {};
}

int FeedbackPages::write(const std::string& page) {
    return writeMarking(m_paths[m_next++], QByteArray::fromStdString(page));
}

} // namespace tailpoint
