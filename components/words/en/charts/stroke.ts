/** Words of the chart of torque along the stroke. English. */

import { FORM_TIMES } from '../factors';

export const STROKE_CHART = {
  titles: {
    blind: 'The torque rises with the chamfer, then holds until the tap stops',
    through: 'The torque rises with the chamfer and falls as it breaks out',
    thin: 'The work is thinner than the chamfer is long: the torque never reaches its full height',
    form: 'A form tap works hardest where its full thread begins',
    crossed: 'Where the bore crosses, less is cut, but every tooth knocks as it comes back',
  },
  subtitle: 'Torque as the tap goes in and comes back: {conditions}',
  descriptions: {
    blind:
      'A line climbs from zero while the chamfer enters, then runs nearly level, a little upward with the rubbing of the full threads, until the tap stops. A low second line is the way back.',
    through:
      'A line climbs from zero while the chamfer enters, runs nearly level, and falls as the chamfer leaves the far face, down to the rubbing of the threads. A low second line is the way back.',
  },
  bands: {
    cut: 'what a prediction of torque may miss by for a sharp, oiled tap, 1.4 times either way, or less once your own reading is in it.',
    form: `published ratios of a form tap’s torque to a cutting tap’s, ${FORM_TIMES} times, and the doubt of the prediction on top.`,
  },
  x: 'Travel of the nose below the face',
  y: 'Torque',
  inward: { short: 'in', long: 'going in' },
  back: { short: 'back', long: 'coming back' },
  whole: { short: 'whole', long: 'if the wall were whole' },
  peak: 'most {torque}',
  stages: {
    enters: { short: 'goes in', long: 'chamfer goes in' },
    full: { short: 'all in', long: 'all of it works' },
    leaves: { short: 'comes out', long: 'chamfer comes out' },
  },
} as const;
