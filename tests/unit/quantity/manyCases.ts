/**
 * How many random cases a test tries: the count that guards every run, or as many times more as
 * `STRANDWISE_TEST_CASES` asks for, when somebody has the time.
 */
export function manyCases(count: number): number {
  const times = Number(process.env['STRANDWISE_TEST_CASES'] ?? 1)
  if (!(times >= 1)) throw new Error('STRANDWISE_TEST_CASES is a number of at least 1')
  return Math.round(count * times)
}
