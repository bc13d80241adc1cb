/**
 * What search results and link previews say of pages whose other words travel to the browser: apart
 * from those, so that these do not. English.
 */

export const DESCRIPTIONS = {
  calculators:
    'Small calculators for tapped holes, one question each: where chips go, chamfers, depths, chip room, torque.',
  jobs: 'Job cards kept in this browser: several holes to a job, printed as one set-up sheet, carried off and brought in as a file.',
  drawer:
    'The taps, drills and machines a shop has, typed or out of a spreadsheet, each row read or told why not; the planner then says what they make of a hole.',
  practice:
    'Exercises on tapped holes, made from a number: reach, drills, taps, sheets, gauges, causes, drawings. Hints and full workings.',
  sheet:
    'A worksheet of exercises on tapped holes, made from a number, to print with or without its answers.',
  review:
    'The lessons’ questions, asked again when they are about to be forgotten. Kept on this device only; paper cards to print.',
  cards:
    'The lessons’ recall questions as cards to cut out and fold: question on one side, answer on the other.',
};
