export { engine } from '../../../components/calculators/form-tap-hole/engine';
export { EXAMPLE } from '../../../components/calculators/form-tap-hole/examples';
export { INPUTS } from '../../../components/calculators/form-tap-hole/inputs';
export { WORDS } from '../../../components/words/en/calculators/form-tap-hole/messages';
export { FormTapHole as View } from '../../../components/calculators/form-tap-hole/view';
