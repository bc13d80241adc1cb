/** Cómo se nombra una fuente junto a un número y qué significa su clase para quien lee. */

import type * as english from '../en/sources';
import type { Same } from './same';

export const SOURCE_KINDS: Same<typeof english.SOURCE_KINDS> = {
  standard: {
    heading: 'Normas',
    mark: 'norma',
    meaning: 'Una norma publicada: a ella se atienen el plano y el calibre.',
  },
  handbook: {
    heading: 'Manuales',
    mark: 'manual',
    meaning: 'Una tabla impresa con la que los talleres trabajan desde hace años.',
  },
  paper: {
    heading: 'Artículos',
    mark: 'artículo',
    meaning: 'Un resultado medido o razonado en una revista.',
  },
  'makers-table': {
    heading: 'Tablas de fabricantes',
    mark: 'tabla de un fabricante',
    meaning:
      'Las cifras de un fabricante para lo suyo: ciertas en lo general, no siempre en el valor.',
  },
  'open-data': {
    heading: 'Datos abiertos',
    mark: 'datos abiertos',
    meaning: 'Una tabla que cualquiera puede copiar, contrastada con otras donde se pudo.',
  },
  regulation: {
    heading: 'Reglamentos y guías de seguridad',
    mark: 'reglamento',
    meaning: 'La regla o guía en que se apoya un aviso. Las de su lugar de trabajo van primero.',
  },
  'common-practice': {
    heading: 'Práctica común',
    mark: 'práctica común',
    meaning: 'Lo que hacen los preparadores, sin publicación detrás. Buenos talleres difieren.',
  },
  memory: {
    heading: 'De memoria',
    mark: 'de memoria',
    meaning: 'Recordado y no vuelto a leer. Compruébelo antes de fiarse.',
  },
  estimate: {
    heading: 'Estimaciones nuestras',
    mark: 'estimación nuestra',
    meaning:
      'Una cifra elegida a juicio, sin ensayo ni documento detrás. Vigile los primeros agujeros.',
  },
  derived: {
    heading: 'Deducido aquí',
    mark: 'deducido aquí',
    meaning: 'Sale de la geometría o de una fórmula dada al lado: puede comprobarlo usted mismo.',
  },
};
