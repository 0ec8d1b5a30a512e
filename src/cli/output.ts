/** What a command of the command line answers: text for stdout, sentences for stderr, the exit code. */
export interface Output {
  readonly out: string
  readonly err: string
  readonly exit: 0 | 1 | 2
}
