/** Words of the page of all cautions. English. */

export const SAFETY_PAGE = {
  title: 'Safety',
  description:
    'Cautions for drilling and tapping holes: where people get hurt, what to do, and the public rules behind it.',
  lead: 'These are the usual cautions for drilling and tapping, in the order of the work. They also stand beside the answers where each hazard arises.',
  disagree: 'If anything here disagrees with them, follow them, and stop until it is clear.',
  hurt: 'When somebody is hurt',
  hurtText:
    'Stop the machine, get help, call your local emergency number. For a chip in the eye or fluid under the skin go to a doctor at once and take the safety data sheet with you: fluid driven in under pressure can look small and still cost a finger.',
};
