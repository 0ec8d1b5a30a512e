/**
 * Greatest force over the weight when a weight (N, above zero) falls a height h (m) on to a spring of
 * stiffness K (N/m), a fall of nothing being a load put on at once:
 * 1 + sqrt(1 + 2 h K / W) (energy; Gere, Mechanics of Materials, 7th ed., problem 9.10-1).
 * @example dropFactor(0.01, 30000, 40) // 5
 * @example dropFactor(0, 30000, 40) // 2
 */
export const dropFactor = (height: number, stiffness: number, weight: number): number => 1 + Math.sqrt(1 + (2 * height * stiffness) / weight)
