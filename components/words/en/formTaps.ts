/** Words of the lesson on form taps. English. */

export const PICK_HOLE = {
  label: 'The hole before the tap',
  said: {
    thin: 'A hole of {hole:limit} gives {percent:threadPercent} on the form-tap scale: too little. The crests stay open, and the minor diameter may leave its class.',
    inside:
      'A hole of {hole:limit} gives {percent:threadPercent} on the form-tap scale: inside. One step of {step:limit} larger would cost {lost:threadPercent} of thread.',
    full: 'A hole of {hole:limit} gives {percent:threadPercent} on the form-tap scale: too full. The metal has nowhere to go, the torque shoots up, and the tap may stick or break.',
  },
} as const;

export const BESIDE = {
  caption: 'The same hole cut and formed: {thread} in {material}',
  what: 'What',
  cut: 'Cut: {tap}',
  form: 'Formed: {tap}',
  hole: 'Hole before the tap',
  torque: 'Torque, sharp tap',
  share: 'Of what breaks the tap, sharp',
  worn: 'Of what breaks the tap, worn',
  chips: 'Chips',
  none: 'none',
  back: 'long ones, back up the flutes',
} as const;

export const FORMABLE = {
  caption: 'Which metals can be pressed into a thread',
  metal: 'Metal',
  verdict: 'Form tap?',
  yes: 'Yes',
  'if-ductile': 'If ductile: try it in scrap first',
  marginal: 'Marginal: try it in scrap first',
  rarely: 'Rarely, with care',
  no: 'No: it cracks, crumbles or springs back',
} as const;

export const HOLE_WINDOW = {
  title: 'Where the hole must land before the form tap',
  name: 'hole for 75 to 60 % of thread, mm',
  description:
    'A bar from {min:limit} to {max:limit}: holes for 75 to 60 % on the form-tap scale, with the drills near it. Most of them likely cut past its large end.',
} as const;
