/** What is asked before a file is touched. */
export const QUESTIONS = {
  unsaved: {
    title: 'Save the changes first?',
    text: 'This hanger was changed since it was last saved. What is not saved is lost.',
    answers: { save: 'Save', discard: 'Don’t save', cancel: 'Cancel' },
  },
  overwrite: {
    title: 'The file was changed elsewhere',
    text: 'Somebody else changed the file since it was opened here. Saving over it loses those changes.',
    answers: { overwrite: 'Save over it', saveAs: 'Save as…', cancel: 'Cancel' },
  },
} as const
