/** Words around the rules of thumb. English. */

export const RULES_PAGE = {
  title: 'Rules of thumb, tested',
  description:
    'What is said at the machine about tapped holes: each rule with a case where it holds, a case where it fails, and both worked out.',
  lead: 'A rule of thumb is a worked example whose numbers were forgotten. Here each one gets its numbers back: one case where it holds, one where it fails. Both were worked out for this page and open with everything filled in.',
  groups: 'Groups of rules',
  quoted: '“{heard}”',
  holds: 'Holds',
  fails: 'Fails',
  /** Read out behind the link to a case, whose own words are the same for many. */
  holdsCase: ': the case where “{heard}” holds',
  failsCase: ': the case where “{heard}” fails',
  never: 'Never',
  neverText: 'Two habits that have no case where they hold. They hurt people.',
  /** `{lessons}` and `{glossary}` are links. */
  more: '{lessons} show the mechanics behind these. Words that mean two things are in the {glossary}.',
  lessons: 'The lessons',
  glossary: 'glossary',
};
