export { engine } from '../../../components/calculators/torque/engine';
export { EXAMPLE } from '../../../components/calculators/torque/examples';
export { INPUTS } from '../../../components/calculators/torque/inputs';
export { WORDS } from '../../../components/words/en/calculators/torque/messages';
export { Torque as View } from '../../../components/calculators/torque/view';
