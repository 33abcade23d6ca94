#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace lacewright {

// A whole number that is not fixed: how often a repeat is worked. The caller numbers its own.
using Variable = int;

// constant + sum of coefficient * variable; the shape of every stitch count in this program.
class AffineForm {
 public:
    struct Term {
        Variable variable = 0;
        std::int64_t coefficient = 0;  // never 0
        bool operator==(const Term&) const = default;
    };
    // The value of each variable, for working a form out in plain numbers.
    using Assignment = std::function<std::int64_t(Variable)>;

    AffineForm() = default;
    AffineForm(std::int64_t constant) : constant_(constant) {}
    static AffineForm of(Variable variable, std::int64_t coefficient = 1);

    std::int64_t constant() const { return constant_; }
    const std::vector<Term>& terms() const { return terms_; }  // by ascending variable
    std::int64_t coefficient(Variable variable) const;
    bool isConstant() const { return terms_.empty(); }

    AffineForm& add(const AffineForm& other, std::int64_t times = 1);
    AffineForm& add(std::int64_t constant) {
        constant_ += constant;
        return *this;
    }
    AffineForm& add(Variable variable, std::int64_t coefficient);
    AffineForm operator+(const AffineForm& other) const { return AffineForm(*this).add(other); }
    AffineForm operator-(const AffineForm& other) const { return AffineForm(*this).add(other, -1); }

    std::int64_t at(const Assignment& values) const;
    // Every variable replaced by what `find` gives for it; null keeps it.
    AffineForm substituted(const std::function<const AffineForm*(Variable)>& find) const;
    // "6n + 2" with the names given; "0" for nothing.
    std::string text(const std::function<std::string(Variable)>& name) const;

    bool operator==(const AffineForm&) const = default;

 private:
    std::int64_t constant_ = 0;
    std::vector<Term> terms_;
};

}  // namespace lacewright
