/** What each part of the core is about, for saying where a source is used. English. */

export const MODULES: Record<string, string> = {
  chamfer: 'Chamfer classes',
  mill: 'Thread milling',
  chips: 'Where chips go and whether they fit',
  cycle: 'Speed, feed and time',
  data: 'Tables',
  diagnose: 'Broken-tap finder',
  drawing: 'Whole drawings',
  drill: 'Drills',
  engagement: 'How deep is enough',
  gauge: 'Gauges',
  hole: 'Depths',
  job: 'Job cards',
  limits: 'Limits of the class',
  load: 'Torque and tooth load',
  material: 'Materials',
  plan: 'The plan of a hole',
  practice: 'Exercises',
  review: 'When to ask again',
  tap: 'Taps',
  thread: 'Reading a thread',
};
