/** A short run of the same seed each time; `npm run fuzz` asks for more, and tells how it went. */
export const TRIES = Number(process.env['STRANDWISE_FUZZ_TRIES'] ?? 2000)
export const SEED = Number(process.env['STRANDWISE_FUZZ_SEED'] ?? 20261126)
/** Every how many inputs that can be read are checked whole. */
export const CHECKED = 20

/** Says how a long run went. */
export const tell = (tally: object): void => { if (TRIES > 10_000) console.log(`${JSON.stringify(tally)}\n`) }
