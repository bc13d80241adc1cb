/** What should be said beside a thread: notes, and why it has no limits where it has none. */

import type { Note } from '../../core/outcome';
import { noteText, problemText, type Unit } from '../words';
import { NOTES } from '../words/en/notes';

function noteOrReason(note: Note, unit: Unit): string {
  if (note.code in NOTES) return noteText(note, unit);
  return problemText({ code: note.code, ...(note.data ? { data: note.data } : {}) }, unit);
}

/** All notes as one text. */
export function notesText(notes: readonly Note[], unit: Unit): string {
  return notes.map((note) => noteOrReason(note, unit)).join(' ');
}
