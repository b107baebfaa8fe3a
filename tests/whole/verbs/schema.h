// A JSON value against a JSON Schema (2020-12): the keywords that our two schemas use, and no others.
#pragma once

#include <QJsonObject>
#include <QJsonValue>
#include <QString>

namespace tailpoint::whole {

class Schema {
public:
    explicit Schema(const QJsonObject& root) : m_root(root) {}

    /// Empty: valid. Otherwise the path and what the schema asks there.
    QString fault(const QJsonValue& value) const { return check(value, m_root, QStringLiteral("$")); }

private:
    QString check(const QJsonValue& value, const QJsonObject& schema, const QString& path) const;
    QString checkObject(const QJsonObject& object, const QJsonObject& schema, const QString& path) const;
    QString checkArray(const QJsonArray& array, const QJsonObject& schema, const QString& path) const;
    std::ptrdiff_t howManyFit(const QJsonValue& value, const QJsonArray& schemas) const;
    QJsonObject m_root;
};

} // namespace tailpoint::whole
