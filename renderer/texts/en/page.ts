/** The page as a whole, and the strip at its head. */
export const PAGE = {
  appName: 'Strandwise',
  /** Title of a window with changes that are not saved. */
  unsavedTitle: (name: string) => `${name} •`,
  questions: 'Questions',
  drawing: 'Drawing',
  parts: 'Parts',
  backToLadder: 'Back to the ladder',

  hangerName: 'Name of the hanger',
  noFile: 'not in a file yet',
  noFileUnsaved: 'not in a file yet, changes not saved',
  fileUnsaved: (file: string) => `${file}, changes not saved`,
  actions: 'File',
  commands: {
    new: 'New',
    open: 'Open…',
    save: 'Save',
    saveAs: 'Save as…',
    pdf: 'Save as PDF…',
    print: 'Print…',
    undo: 'Undo',
    redo: 'Redo',
    catalogue: 'Catalogue',
    shelf: 'Shelf',
    hangers: 'My hangers',
    place: 'What the place needs',
    sheets: 'Sheets',
    choosing: 'Choose sizes',
    maps: 'Maps',
    compare: 'Compare two hangers',
    chance: 'Chance',
    habits: 'Units and appearance…',
    help: 'Help',
  },
  recent: 'Recent',
  demos: 'Demos',
  /** What looks beyond this one hanger as it is. */
  tryOut: 'Try out',
  more: 'More',
  /** Puts a message away. */
  done: 'Done',
} as const
