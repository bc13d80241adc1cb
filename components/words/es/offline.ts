/** Lo que el manual dice de guardarse en el dispositivo, y las páginas que muestra a falta de otra. */

import type * as english from '../en/offline';

export const OFFLINE: typeof english.OFFLINE = {
  keeping: 'Guardándose en este dispositivo para usarlo sin red: {percent} %.',
  threads:
    'Funciona sin red en este dispositivo. Páginas de roscas guardadas hasta ahora: {kept} de {of}; las demás vienen detrás.',
  all: 'Todo está guardado en este dispositivo y funciona sin red.',
  failed: 'Todavía no se pudo guardar todo en este dispositivo. Se intenta otra vez por sí solo.',

  newer: 'Hay lista una copia más nueva del manual.',
  use: 'Abrirla ahora',
  keepOld: 'Todavía no',
  taking:
    'La copia nueva se abre en cuanto esta termine lo que está haciendo. Puede tardar medio minuto.',
  replaced:
    'Otra ventana abrió una copia más nueva del manual. Recargue aquí cuando le venga bien.',
  reload: 'Recargar',
  stays: 'Lo que escribió se queda.',
};

export const NO_NETWORK_PAGE: typeof english.NO_NETWORK_PAGE = {
  title: 'Sin red',
  description: 'Qué hacer cuando una página no está guardada en este dispositivo y no hay red.',
  heading: 'No hay red, y esta página todavía no está guardada aquí',
  text: 'El planificador, los cálculos, las lecciones y la búsqueda se guardan en un dispositivo tras la primera visita, las páginas de roscas un poco después. Esta página todavía no está entre ellas.',
  search: 'Buscar en lo guardado',
  plan: 'Planear un agujero',
  threads: 'Límites de cualquier rosca, calculados en este dispositivo',
  again: 'Cuando vuelva la red, cargue otra vez esta página.',
};

export const NOT_FOUND_PAGE: typeof english.NOT_FOUND_PAGE = {
  title: 'No existe la página',
  description: 'No hay ninguna página en esta dirección.',
  heading: 'No hay página en esta dirección',
  text: 'Puede que la dirección esté mal escrita o que la página haya cambiado de sitio. Una rosca se encuentra antes escribiéndola.',
};

export const FOLDER: typeof english.FOLDER = {
  file: 'LEAME.txt',
  text: `MANUAL DEL AGUJERO ROSCADO {version}, en una carpeta

Abra index.html con doble clic, en Chromium, Chrome, Edge o Firefox. No se instala nada
y no se pide nada a ninguna red.

Descomprima antes todo el zip: una página abierta dentro de él no encuentra su programa ni sus estilos.

Los trabajos, planos y lecturas los guarda el navegador en este dispositivo, si lo permite con
archivos. Guárdelos de vez en cuando en un archivo: puede olvidarlos si la carpeta cambia de sitio.

Un manual más nuevo es una carpeta más nueva. Póngala junto a esta; sus archivos se abren en ella.
`,
};
