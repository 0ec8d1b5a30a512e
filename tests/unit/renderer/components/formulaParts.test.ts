import { describe, expect, it } from 'vitest'
import { formulaParts } from '../../../../renderer/components/formulaParts'

const print = (formula: string): string => formulaParts(formula).map(({ text, sub, symbol }) => (symbol ? `[${text}${sub && `,${sub}`}]` : text)).join('')

describe('a formula set in type', () => {
  it.each([
    ['m_cord * c_cord', '[m,cord] × [c,cord]'],
    ['c_d * d^2', '[c,d] × [d]^2'],
    ['min(1, 1 - k_t * log10(t / t_0))', 'min(1, 1 − [k,t] × log10([t] / [t,0]))'],
    ['N_T * exp(-mu_pot * alpha)', '[N,T] × exp(−[μ,pot] × [α])'],
    ['2 * pi * mu * n_w * t_w', '2 × [π] × [μ] × [n,w] × [t,w]'],
  ])('%s', (formula, printed) => expect(print(formula)).toBe(printed))
})
