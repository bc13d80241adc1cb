/** Palabras del marco de cada página. */

import type * as english from '../en/site';

export const LANGUAGE: typeof english.LANGUAGE = {
  tag: 'es',
  home: '/es',
  site: 'Manual del agujero roscado',
};

export const FRAME: typeof english.FRAME = {
  skip: 'Ir al contenido',
  translated:
    'Traducción que todavía no ha leído ningún mecanizador que hable español. Las lecciones y las demás páginas están en inglés. Si algo no cuadra, vale el texto inglés.',
  main: 'Principal',
  search: 'Buscar',
  safety: 'Seguridad (en inglés)',
  glossary: 'Glosario (en inglés)',
  rules: 'Reglas de taller (en inglés)',
  about: 'Acerca de, y lo que no sabe (en inglés)',
  sources: 'Fuentes, y cuánto fiarse de ellas (en inglés)',
};

export const EDITION: typeof english.EDITION = {
  built: 'hecho el',
  licence: 'Licencia MIT.',
};

export const LINES: typeof english.LINES = {
  plan: 'Planear',
  threads: 'Roscas',
  calculators: 'Cálculos',
  drawing: 'Plano',
  lessons: 'Lecciones',
  brokenTaps: 'Roturas',
  jobs: 'Trabajos',
  safety: 'Seguridad',
  sources: 'Fuentes',
};

export const PLANNER_PAGE: typeof english.PLANNER_PAGE = {
  title: 'Planear un agujero roscado',
  description:
    'Escriba una rosca, un material y una profundidad: qué macho, qué broca, a qué profundidad, velocidad y par, dibujado a escala y con cada supuesto.',
  heading: 'Planear un agujero',
  noScript:
    'El formulario necesita JavaScript, que está desactivado en este navegador. Abajo hay un ejemplo resuelto de lo que contesta. No taladre con él.',
  example: 'Ejemplo resuelto',
};

export const FRONT_PAGE: typeof english.FRONT_PAGE = {
  description:
    'Planee un agujero roscado, aprenda por qué funciona e imprima la hoja: lecciones y cálculos para quien hace roscas interiores.',
  heading: 'Planear un agujero roscado',
  lede: 'Escriba la rosca del plano: qué macho, qué broca, hasta dónde, a qué velocidad, con qué par, y por qué.',
  learn: 'Aprender por qué (en inglés)',
  learnText: 'Lecciones en las que primero se predice y luego se prueba con los mismos números.',
  trust: 'Cuánto fiarse (en inglés)',
  trustText: 'Cada norma, tabla y regla de taller que está detrás de los números.',
};

export const CARD_PAGE: typeof english.CARD_PAGE = {
  title: 'Hoja de trabajo',
  description:
    'Un agujero roscado en una hoja: macho, broca, profundidades y desde dónde se miden, velocidad, avance, par, calibre, fluido, qué vigilar y espacios para rellenar.',
  noScript:
    'JavaScript está desactivado en este navegador, así que esta hoja muestra el ejemplo resuelto. No es para usar.',
};
