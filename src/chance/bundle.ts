/**
 * Strength of a bundle of strands that share a load equally, whatever is left of them: the best of k times the k-th strongest
 * (H. E. Daniels, Proc. Roy. Soc. A 183, 1945). The strands are put in falling order.
 * @example bundleStrength(Float64Array.of(1, 3, 2), 3) // 4
 */
export function bundleStrength(strands: Float64Array, count: number): number {
  let best = 0
  for (let i = 0; i < count; i += 1) {
    const strand = strands[i]!
    let at = i
    for (; at > 0 && strands[at - 1]! < strand; at -= 1) strands[at] = strands[at - 1]!
    strands[at] = strand
  }
  for (let i = 0; i < count; i += 1) best = Math.max(best, (i + 1) * strands[i]!)
  return best
}
