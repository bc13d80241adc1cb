/**
 * Fluido según el material: lo que el oficio suele usar. Práctica común; mandan la ficha de datos
 * de seguridad del fluido y la especificación del cliente.
 */

import type * as english from '../en/fluids';
import type { Same } from './same';

export const FLUIDS: Same<typeof english.FLUIDS> = {
  'steel-free': 'Aceite de roscar, o emulsión al 8–10 %',
  'steel-low': 'Aceite de roscar, o emulsión al 8–10 %',
  'steel-medium': 'Aceite de roscar, o emulsión al 8–10 %',
  'steel-alloy': 'Aceite de roscar, o emulsión al 8–10 %',
  'steel-alloy-30hrc': 'Aceite de roscar de extrema presión',
  'steel-40hrc': 'Aceite de roscar de extrema presión',
  'steel-hard': 'Lo que diga el fabricante de la fresa',
  'stainless-ferritic': 'Aceite de roscar de extrema presión, o emulsión al 10 % o más',
  'stainless-free': 'Aceite de roscar de extrema presión, o emulsión al 10 % o más',
  'stainless-austenitic': 'Aceite de roscar de extrema presión, o emulsión al 10 % o más',
  'stainless-duplex': 'Aceite de roscar de extrema presión',
  'stainless-ph': 'Aceite de roscar de extrema presión',
  'iron-grey': 'En seco aspirando el polvo, o emulsión',
  'iron-ductile': 'Emulsión, o en seco aspirando el polvo',
  'al-wrought': 'Emulsión al 8–10 %, o aceite ligero de roscar; no en seco',
  'al-high-strength': 'Emulsión al 8–10 %, o aceite ligero de roscar; no en seco',
  'al-cast': 'Emulsión al 8–10 %, o aceite ligero de roscar',
  'al-cast-high-si': 'Emulsión al 8–10 %, o aceite ligero de roscar',
  'brass-free': 'Emulsión, aceite ligero o en seco',
  magnesium: 'Aceite mineral fluido, o en seco con macho afilado; nada mezclado con agua',
  zinc: 'Emulsión al 8–10 %, o aceite ligero de roscar',
  bronze: 'Aceite de roscar, o emulsión al 8–10 %',
  copper: 'Aceite ligero sin azufre activo, que mancha el cobre',
  plastic:
    'Agua, o en seco aspirando la viruta; pruebe antes los fluidos, algunos agrietan el plástico',
  'plastic-filled': 'En seco aspirando el polvo, o agua; algunos fluidos agrietan el plástico',
  titanium: 'Aceite de roscar; algunos clientes prohíben el cloro',
  nickel: 'Aceite de roscar de extrema presión; algunos clientes prohíben azufre y cloro',
};
