/** How the command line reads a file: its text, or the sentence that says why not. */
export type ReadFile = (file: string) => { readonly ok: true; readonly text: string } | { readonly ok: false; readonly why: string }
