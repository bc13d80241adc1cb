/** Words of the pages for whoever teaches. English. */

export const TEACH = {
  teach: 'Teach',
  back: 'Back',
  next: 'Next',
  showAnswer: 'Show the answer',
  screen: 'Screen',
  screenOf: 'Screen {at} of {count}',
  question: 'The question',
  afterwards: 'Afterwards you can',
  cautions: 'Before anybody touches a tap:',
  safety: 'All cautions',
  notes: 'Notes for the instructor',
  hideNotes: 'Hide the notes',
  share: 'Link for the class',
  shareText:
    'Opens this screen, with its figure as it stands now. It shows no notes and no answers.',
  shareCode: 'Square code of the link for the class',
  copy: 'Copy the link',
  copied: 'Copied.',
  notCopied: 'Not copied: mark the link and copy it by hand.',
  close: 'Close',
  print: 'Print as a handout',
  lesson: 'The lesson to read',
  allLessons: 'All lessons to teach',
  option: 'Answer',
  others: 'And the others',
  wrong: 'Wrong answers to expect',
  within: 'Within {tolerance} counts.',
  inOrder: 'In order',
  answerLines: 'Your answer',
} as const;

/** What a lesson is called when it stands before a class. */
export const DECK = {
  title: 'Teach: {title}',
  description: '{title}, one idea a screen, for a class. {question}',
} as const;

export const NOTES = {
  minutes: '{minutes} min',
  timing: 'Time',
  whole: 'In all',
  shorten: 'Short of time',
  bring: 'Bring',
  show: 'Show',
  watch: 'Let them watch',
  care: 'Care',
  goesWrong: 'What goes wrong',
  said: 'They say',
  reply: 'Ask or show',
  fromLesson: 'With the lesson',
  worksheet: 'Worksheet',
  worksheetKey: 'Worksheet with its key',
} as const;
