// SPDX-License-Identifier: MIT
// What goes along with a value of ours and means nothing here.
#pragma once

#include <memory>
#include <string>
#include <utility>

namespace tailpoint {

/// A value of any type that can be compared, or nothing: only who put it in and knows its type can look at
/// it. It never changes, so copies share it; two are equal where their values are, and of one type.
class Opaque {
public:
    Opaque() = default;

    template <class T>
    static Opaque of(T value) {
        Opaque made;
        made.m_content = std::make_shared<const Holder<T>>(std::move(value));
        return made;
    }
    /// nullptr: nothing is in it, or something of another type.
    template <class T>
    const T* as() const {
        const auto* holder = dynamic_cast<const Holder<T>*>(m_content.get());
        return holder ? &holder->value : nullptr;
    }

    /// What is written in it for people, where its type has a wordsIn(value) that says so; else nothing.
    std::string words() const { return m_content ? m_content->words() : std::string(); }

    friend bool operator==(const Opaque& a, const Opaque& b) {
        return a.m_content == b.m_content ||
               (a.m_content && b.m_content && a.m_content->equals(*b.m_content));
    }

private:
    struct Content {
        virtual ~Content() = default;
        virtual bool equals(const Content& other) const = 0;
        virtual std::string words() const = 0;
    };
    template <class T>
    struct Holder final : Content {
        explicit Holder(T held) : value(std::move(held)) {}
        bool equals(const Content& other) const override {
            const auto* same = dynamic_cast<const Holder*>(&other);
            return same && same->value == value;
        }
        std::string words() const override {
            if constexpr (requires { std::string(wordsIn(value)); })
                return wordsIn(value);
            else
                return {};
        }
        T value;
    };
    std::shared_ptr<const Content> m_content;
};

} // namespace tailpoint
