/**
 * Fluid by material: what the trade commonly uses. English.
 * Common practice; the fluid’s own safety data sheet and the customer’s specification rule.
 */

import type { MaterialId } from '../../../core/material/material';

export const FLUIDS: Record<MaterialId, string> = {
  'steel-free': 'Tapping oil, or emulsion at 8–10 %',
  'steel-low': 'Tapping oil, or emulsion at 8–10 %',
  'steel-medium': 'Tapping oil, or emulsion at 8–10 %',
  'steel-alloy': 'Tapping oil, or emulsion at 8–10 %',
  'steel-alloy-30hrc': 'Extreme-pressure tapping oil',
  'steel-40hrc': 'Extreme-pressure tapping oil',
  'steel-hard': 'As the cutter’s maker says',
  'stainless-ferritic': 'Extreme-pressure tapping oil, or emulsion at 10 % and more',
  'stainless-free': 'Extreme-pressure tapping oil, or emulsion at 10 % and more',
  'stainless-austenitic': 'Extreme-pressure tapping oil, or emulsion at 10 % and more',
  'stainless-duplex': 'Extreme-pressure tapping oil',
  'stainless-ph': 'Extreme-pressure tapping oil',
  'iron-grey': 'Dry with the dust drawn off, or emulsion',
  'iron-ductile': 'Emulsion, or dry with the dust drawn off',
  'al-wrought': 'Emulsion at 8–10 %, or light tapping oil; not dry',
  'al-high-strength': 'Emulsion at 8–10 %, or light tapping oil; not dry',
  'al-cast': 'Emulsion at 8–10 %, or light tapping oil',
  'al-cast-high-si': 'Emulsion at 8–10 %, or light tapping oil',
  'brass-free': 'Emulsion, light oil or dry',
  magnesium: 'Thin mineral oil, or dry with a sharp tap; nothing mixed with water',
  zinc: 'Emulsion at 8–10 %, or light tapping oil',
  bronze: 'Tapping oil, or emulsion at 8–10 %',
  copper: 'Light oil without active sulphur, which stains copper',
  plastic: 'Water, or dry with the chips drawn off; try fluids first, some crack plastics',
  'plastic-filled': 'Dry with the dust drawn off, or water; some fluids crack plastics',
  titanium: 'Tapping oil; some customers bar chlorine',
  nickel: 'Extreme-pressure tapping oil; some customers bar sulphur and chlorine',
};
