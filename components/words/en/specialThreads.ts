/** Words of the lesson on special threads. English. */

export const PICK_SPECIAL = {
  label: 'What stands on the drawing',
  said: {
    left: 'A left-hand thread. Left-hand tap, left-hand gauge, and a cycle with the spindle the other way round. The drill stays the same: {drill}.',
    parallel:
      'A parallel pipe thread. It has limits like any other: minor diameter {min:limit} to {max:limit}, drill {drill}. A washer or a ring seals it, not the thread.',
    taper:
      'A taper pipe thread. It has no two limits: the gauge must stop within {turns:number} turn of its mark, so the depth of the tap makes the size. Drill {drill}, straight; a taper reamer before the tap makes it easier.',
    insert:
      'The hole for a wire insert, larger than the thread that goes into it in the end: minor diameter {min:limit} to {max:limit}, drill {drill}. It takes its own tap and its own gauge.',
    plated:
      'A class for a coated thread: its window lies higher, to leave room. Pitch diameter {pitchMin:limit} to {pitchMax:limit} before coating. It takes a tap for that class.',
  },
} as const;

export const INSERTS = {
  caption: 'Hole for a wire insert, beside the plain one',
  screw: 'Screw',
  plain: 'Plain hole, minor diameter',
  insert: 'Insert hole, minor diameter',
  drill: 'Drill',
  wall: 'Largest diameter cut',
} as const;
