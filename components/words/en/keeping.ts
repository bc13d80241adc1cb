/** Words for what a device keeps, wherever something is kept. English. */

export const KEEPING = {
  unsaved: 'Not saved on this device',
  full: 'This browser has no room left. Save a file, then remove what is done with.',
  blocked:
    'This browser keeps nothing for this page, perhaps by its settings. What you do here is gone when the page is closed: save a file.',
  newer:
    'What is kept here was written by a newer version of the handbook. It is left untouched and nothing is saved over it. Load the page again, or save what you did here to a file.',
  save: 'Save a file',
  aside: 'Something kept here could not be read',
  asideText:
    'It was set aside as it stood, and nothing of it is lost. Save it to a file to mend it or send it on.',
  asideSave: 'Save what could not be read',
  asideForget: 'Forget it',
  unread: 'Some entries could not be read. They are kept as they stand and go into every file.',
  clearSure: 'Clear it',
  leave: 'Leave it',
} as const;
