/** Words of what the shop has read itself. English. */

export const SHOP = {
  heading: 'Your shop',
  none: 'No torque of your own is in this answer. Enter one under “A torque you read on the machine”; then it can be kept here, for this thread and material on that machine.',
  form: 'Keep this reading',
  machine: 'Machine it was read on',
  machineHint: 'As you call it, like VMC-A. The reading counts for this machine alone.',
  machineMissing: 'Enter the machine: on another one the same torque reads differently.',
  keep: 'Keep it on this device',
  kept: 'Kept on this device.',
  fileName: 'torque-reading.json',
  remove: 'Remove',
  learned: 'On {machine}: {factor} times the handbook',
  from: 'from {count} of your readings, newest {newest}',
  fromOne: 'from your reading of {newest}',
  sharp: 'Torque, sharp',
  worn: 'Torque, worn',
  share: 'Of what breaks the tap, worn',
  between: 'expected between {band}',
  disagree: 'Your readings disagree',
  disagreeText:
    'They lie more than twice apart. Something differed between them: the hole, the oil, the tap, or the meter. Remove the one you trust least.',
  entry: '{taken}: {torque}, {style}, {edge}',
} as const;
