/** A run of 480 M6 holes at Copperfell Works: in 6061, and the same part in 304. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  rate: '75',
  holes: '480',
  setup: '25',
  'gauge-seconds': '16',
  'gauge-every': '10',
  'gauge-rate': '45',
  seconds: '9.5',
  tap: '20',
  'tap-life': '1000',
  drill: '10',
  'drill-life': '1000',
  breaks: '3000',
  'break-cost': '200',
  'b-seconds': '16',
  'b-tap': '38',
  'b-tap-life': '150',
  'b-drill': '0',
  'b-breaks': '600',
  'b-break-cost': '300',
};
