/** An exact rational number. The denominator is positive; the two need not be in lowest terms. */
export interface Ratio {
  readonly numerator: bigint
  readonly denominator: bigint
}

export const ratio = (numerator: bigint, denominator: bigint): Ratio => ({ numerator, denominator })

export const addRatios = (a: Ratio, b: Ratio): Ratio =>
  ratio(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator)

export const multiplyRatios = (a: Ratio, b: Ratio): Ratio =>
  ratio(a.numerator * b.numerator, a.denominator * b.denominator)

/** a / b, for b above zero. */
export const divideRatios = (a: Ratio, b: Ratio): Ratio =>
  ratio(a.numerator * b.denominator, a.denominator * b.numerator)

export const negateRatio = (a: Ratio): Ratio => ratio(-a.numerator, a.denominator)

/** Ten to a whole power, positive or negative. */
export const powerOfTen = (exponent: number): Ratio =>
  exponent < 0 ? ratio(1n, 10n ** BigInt(-exponent)) : ratio(10n ** BigInt(exponent), 1n)
