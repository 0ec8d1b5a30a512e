/**
 * What comes on top of the first value until the last one, as a share of it, by the straight line that
 * fits all best (least squares): one value that lies high or low does not decide.
 *
 * @param {readonly number[]} values in equal steps
 */
export function growth(values) {
  const middle = (values.length - 1) / 2
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  const slope = values.reduce((sum, value, i) => sum + (i - middle) * (value - mean), 0) / values.reduce((sum, _, i) => sum + (i - middle) ** 2, 0)
  const first = mean - slope * middle
  return slope * (values.length - 1) / first
}
