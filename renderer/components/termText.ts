import { withMark } from '#core'

const FIGURES = 4
const SUPERSCRIPT = '⁰¹²³⁴⁵⁶⁷⁸⁹'

const raised = (exponent: number): string =>
  `${exponent < 0 ? '⁻' : ''}${[...String(Math.abs(exponent))].map((digit) => SUPERSCRIPT[Number(digit)] ?? '').join('')}`

/** A number of a worked sum to four figures; far from human size as a power of ten. */
function figuresText(value: number): string {
  const plain = withMark(String(Number(value.toPrecision(FIGURES))))
  if (value === 0 || !Number.isFinite(value) || (Math.abs(value) >= 1e-4 && Math.abs(value) < 1e6)) return plain
  const [mantissa = '', exponent = '0'] = value.toExponential(FIGURES - 1).split('e')
  return `${withMark(String(Number(mantissa)))} × 10${raised(Number(exponent))}`
}

const UNIT_TEXT: Readonly<Record<string, string>> = { '1': '', 'm/s2': 'm/s²', 'N/m2': 'N/m²', 'kg/m3': 'kg/m³' }

/** A value of a worked sum with its SI unit, as it enters the sum. */
export function termText(value: number, unit: string): string {
  const name = UNIT_TEXT[unit] ?? unit
  return name === '' ? figuresText(value) : `${figuresText(value)} ${name}`
}
