#include "tests/whole/verbs/schema.h"

#include <QJsonArray>
#include <QRegularExpression>
#include <QSet>
#include <algorithm>
#include <cmath>

namespace tailpoint::whole {

namespace {

const QSet<QString>& knownKeywords() {
    static const QSet<QString> known = [] {
        QSet<QString> words;
        for (const char* word : {"$schema",
                                 "$id",
                                 "$defs",
                                 "$ref",
                                 "title",
                                 "description",
                                 "default",
                                 "type",
                                 "const",
                                 "enum",
                                 "required",
                                 "properties",
                                 "additionalProperties",
                                 "minProperties",
                                 "maxProperties",
                                 "items",
                                 "minItems",
                                 "maxItems",
                                 "anyOf",
                                 "oneOf",
                                 "not",
                                 "propertyNames",
                                 "minimum",
                                 "maximum",
                                 "exclusiveMinimum",
                                 "minLength",
                                 "maxLength",
                                 "pattern"})
            words << QString::fromLatin1(word);
        return words;
    }();
    return known;
}

bool isOfType(const QJsonValue& value, const QString& type) {
    if (type == QLatin1String("integer"))
        return value.isDouble() && value.toDouble() == std::floor(value.toDouble());
    return (type == QLatin1String("null") && value.isNull()) ||
           (type == QLatin1String("number") && value.isDouble()) ||
           (type == QLatin1String("string") && value.isString()) ||
           (type == QLatin1String("boolean") && value.isBool()) ||
           (type == QLatin1String("array") && value.isArray()) ||
           (type == QLatin1String("object") && value.isObject());
}

bool isOfAnyType(const QJsonValue& value, const QJsonValue& types) {
    if (types.isString())
        return isOfType(value, types.toString());
    const QJsonArray all = types.toArray();
    return std::any_of(all.begin(), all.end(),
                       [&](const QJsonValue& type) { return isOfType(value, type.toString()); });
}

bool keepsLimits(const QJsonValue& value, const QJsonObject& schema) {
    const auto limit = [&](const char* key, double otherwise) {
        return schema[QLatin1String(key)].toDouble(otherwise);
    };
    if (value.isDouble())
        return value.toDouble() >= limit("minimum", -INFINITY) &&
               value.toDouble() <= limit("maximum", INFINITY) &&
               value.toDouble() > limit("exclusiveMinimum", -INFINITY);
    if (!value.isString())
        return true;
    const double length = static_cast<double>(value.toString().toUcs4().size());
    const QString pattern = schema[QLatin1String("pattern")].toString();
    return length >= limit("minLength", 0) && length <= limit("maxLength", INFINITY) &&
           QRegularExpression(pattern).match(value.toString()).hasMatch();
}

QString said(const QString& path, const char* keyword) {
    return path + QLatin1String(": ") + QLatin1String(keyword);
}

bool countKept(qsizetype count, const QJsonObject& schema, const char* least, const char* most) {
    return static_cast<double>(count) >= schema[QLatin1String(least)].toDouble(0) &&
           static_cast<double>(count) <= schema[QLatin1String(most)].toDouble(INFINITY);
}

} // namespace

std::ptrdiff_t Schema::howManyFit(const QJsonValue& value, const QJsonArray& schemas) const {
    return std::count_if(schemas.begin(), schemas.end(), [&](const QJsonValue& schema) {
        return check(value, schema.toObject(), {}).isEmpty();
    });
}

QString Schema::check(const QJsonValue& value, const QJsonObject& schema, const QString& path) const {
    const auto has = [&](const char* keyword) { return schema.contains(QLatin1String(keyword)); };
    const auto the = [&](const char* keyword) { return schema[QLatin1String(keyword)]; };
    for (const QString& keyword : schema.keys())
        if (!knownKeywords().contains(keyword))
            return path + QLatin1String(": the checker doesn't know ") + keyword;
    if (const QString name = the("$ref").toString().section(QLatin1Char('/'), -1); !name.isEmpty())
        return check(value, m_root[QLatin1String("$defs")].toObject()[name].toObject(), path);
    if (has("const") && value != the("const"))
        return said(path, "const");
    if (has("enum") && !the("enum").toArray().contains(value))
        return said(path, "enum");
    if (has("type") && !isOfAnyType(value, the("type")))
        return said(path, "type");
    if (!keepsLimits(value, schema))
        return said(path, "limits");
    if (has("anyOf") && howManyFit(value, the("anyOf").toArray()) == 0)
        return said(path, "anyOf");
    if (has("oneOf") && howManyFit(value, the("oneOf").toArray()) != 1)
        return said(path, "oneOf");
    if (has("not") && check(value, the("not").toObject(), {}).isEmpty())
        return said(path, "not");
    if (value.isObject())
        return checkObject(value.toObject(), schema, path);
    return value.isArray() ? checkArray(value.toArray(), schema, path) : QString();
}

QString Schema::checkObject(const QJsonObject& object, const QJsonObject& schema, const QString& path) const {
    for (const QJsonValue& key : schema[QLatin1String("required")].toArray())
        if (!object.contains(key.toString()))
            return path + QLatin1String(": required ") + key.toString();
    if (!countKept(object.size(), schema, "minProperties", "maxProperties"))
        return said(path, "number of keys");
    const QJsonObject names = schema[QLatin1String("propertyNames")].toObject();
    for (const QString& key : object.keys())
        if (!check(key, names, path).isEmpty())
            return path + QLatin1String(": key ") + key;
    const QJsonObject properties = schema[QLatin1String("properties")].toObject();
    for (const QString& key : object.keys()) {
        const QJsonObject inner =
            (properties.contains(key) ? properties[key] : schema[QLatin1String("additionalProperties")])
                .toObject();
        if (const QString fault = check(object[key], inner, path + QLatin1Char('.') + key); !fault.isEmpty())
            return fault;
    }
    return {};
}

QString Schema::checkArray(const QJsonArray& array, const QJsonObject& schema, const QString& path) const {
    if (!countKept(array.size(), schema, "minItems", "maxItems"))
        return said(path, "number of items");
    const QJsonObject inner = schema[QLatin1String("items")].toObject();
    for (qsizetype i = 0; i < array.size(); ++i)
        if (const QString fault = check(array[i], inner, QStringLiteral("%1[%2]").arg(path).arg(i));
            !fault.isEmpty())
            return fault;
    return {};
}

} // namespace tailpoint::whole
