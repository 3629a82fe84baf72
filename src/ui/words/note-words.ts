/** Words of notes and pictures at the bench. */
export const EMPTY_NOTE = 'There is nothing to keep yet: say what was seen, or choose a picture.'
export const NO_PICTURE =
  'This file is no picture that the browser can read, or it would not become small enough. A photo as JPEG or PNG works everywhere.'
export const FORGOTTEN_NOTE = 'A note that was forgotten with the client.'
export const FORGOTTEN_PICTURE = 'A picture that is no longer in this book.'
