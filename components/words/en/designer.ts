/** The note to a designer whose hole cannot be tapped as drawn. English. */

export const DESIGNER = {
  asked:
    '{designation} in {material}: {fullThread:length} of full thread is asked, in a hole no deeper than {limit:length} to {where}.',
  where: { shoulder: 'the shoulder', point: 'the drill’s point' },
  needs:
    'A machine tap with a chamfer of {threads} threads needs {needed:length} to the shoulder for that. That is {short:length} more than drawn.',
  gives: 'The hole as drawn gives for certain: {list}.',
  givesNone: 'The hole as drawn has no room for full thread under any machine tap.',
  giveOne: '{obtainable:length} of full thread with a chamfer of {threads} threads',
  options: 'What would help, cheapest first:',
  ask: 'Which of these may we mark up? Please confirm in writing, with the grade of screw and the load it must hold.',
  clear: 'The hole can be tapped as drawn; nothing to ask.',
} as const;
