#pragma once

#include <QList>

namespace ts {

/// Bayes' rule over causes of which just one is at work: before × likelihood, made to add up to 1. `before` need not add up to 1.
/// Empty where no cause is possible any more (every product is 0), or where the lists differ in length.
[[nodiscard]] QList<double> bayes(const QList<double> &before, const QList<double> &likelihood);

/// Shannon's entropy in bit: −Σ p log2 p of the weights made to add up to 1; 0 where there is nothing to be unsure of.
[[nodiscard]] double entropyBits(const QList<double> &weights);

/// What a check is expected to tell, in bit: the entropy before less the mean entropy after. `abnormal` is, cause by cause, the
/// chance that it comes out abnormal.
[[nodiscard]] double expectedInformation(const QList<double> &before, const QList<double> &abnormal);

} // namespace ts
