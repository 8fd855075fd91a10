import type { CliWords } from '../cliWords.js'

/** The meaning of each option in Spanish. */
export const options: CliWords['options'] = {
  level:
    'error, warning o info: los avisos de este nivel o superior dan código de salida 1 (por defecto warning)',
  language: 'idioma de todos los textos: de, en, es o fr (por defecto en)',
  today: 'el día de la visita (por defecto: el reloj de este ordenador)',
  since: 'el primer día (por defecto: todos los registros)',
  until: 'el último día (por defecto: todos los registros)',
  ambient: 'temperatura ambiente, para el aceite y los tiempos de vertido (por defecto: no se sabe)',
  machine: 'identificador del historial, si hay varios',
  service:
    'hacer este servicio, pendiente o no; se puede repetir (por defecto: los pendientes y los próximos)',
  sample: 'tomar una muestra de aceite de este cárter en su cambio de aceite; se puede repetir',
  severity: 'qué intervalos valen, normal o severe (por defecto: "use" del historial, si no normal)',
  'soon-hours': 'un servicio está próximo desde estas horas antes (por defecto 10)',
  'soon-km': 'un servicio está próximo desde estos kilómetros antes (por defecto 100)',
  'soon-days': 'un servicio está próximo desde estos días antes (por defecto 14)',
  'stale-days': 'días tras los que una lectura es demasiado vieja para “al día” (por defecto 30)',
  edition:
    'dónde empieza el margen de una llave: 2017 en su marca más baja, 2003 al 20 % del fondo de escala (por defecto 2017)',
  tolerance:
    'tolerancia propia para pares que el manual imprime sin ella (por defecto: el error de la propia llave)',
  'raise-on':
    'stands o ramps (por defecto: ramps solo si la caja no tiene caballetes y el manual permite rampas)',
  'labour-rate': 'precio de la hora de trabajo, para el coste de la mano de obra',
  'times-from':
    'historial o carpeta de otras máquinas de esta hoja, cuyos registros muestran cuánto dura el mismo trabajo; se puede repetir',
  out: 'carpeta para las fichas (se crea si falta)',
  paper: 'visit, wall, label, chart, picks, differences o record (por defecto visit)',
  starts:
    'comienzo de cada escena en el vídeo, para subtítulos en un archivo (por defecto: un archivo por escena)',
  procedure: 'procedimiento propio en lugar de los pasos construidos; se planifican sus servicios',
  to: 'la unidad, como en los documentos o como se suele escribir',
  assume: 'galones, cuartos, pintas y onzas líquidas: us o imperial (por defecto: un error)',
  sheet: 'la hoja de datos de los historiales; se puede repetir',
  gearcases: 'identificadores de los cárteres de la hoja (por defecto rear)',
  variants: 'identificadores de las variantes de la máquina',
  unit: 'unidades de los ejemplos, una o varias: lbf.ft,qt_us,mi,degF (por defecto N.m,mL,km,degC)',
  from: 'una hoja que reescribir en notación corta',
  equipment:
    'qué máquina, por identificador, número de serie o PIN (por defecto: el número de serie del historial)',
  telematics: 'edición del archivo, 2016 o 2020 (por defecto 2020)',
  decimal: 'signo decimal de los números de una tabla, point o comma (por defecto point)',
  record: 'identificador del registro de la visita (por defecto: la última visita)',
  'from-plan': 'escribir un registro de la visita pendiente, para completar y corregir',
  'top-up': 'añadir aceite repuesto entre servicios: volumen y aceite; necesita --at',
  on: 'con --top-up: fecha y lecturas (por defecto: hoy)',
  fix: 'corregir grafía y orden en hojas, cajas de herramientas y existencias, e imprimir cada cambio',
  'dry-run': 'con --fix: imprimir los cambios, no escribir nada',
  baseline: 'los avisos de este archivo están aceptados: ni se imprimen ni se cuentan',
  'write-baseline': 'escribir todos los avisos en este archivo, para aceptarlos',
  quiet: 'imprimir solo los avisos del nivel o superior, sin resumen',
  full: 'imprimir todo, no solo la respuesta',
  brief:
    'imprimir una línea de JSON por servicio: qué manda, cuánto queda, fecha; --format csv tiene las mismas columnas',
  'exit-code':
    'código de salida 3 si un servicio está pendiente o vencido, o una máquina no se debe usar; 4 si ninguno lo está, pero uno no se puede juzgar o no hay servicios',
  every: 'el intervalo del manual: horas, distancia, período, o varios de ellos',
  last: 'fecha y lecturas del último servicio, por ejemplo "2022-11-20 at 301.4 h, 1200 mi"',
  'from-new': 'fecha del primer uso si nunca tuvo servicio, en lugar de --last',
  now: 'fecha y lecturas actuales (fecha por defecto: hoy)',
  first: 'el primer intervalo, si es distinto',
  window: 'cuánto se puede retrasar un servicio antes de estar vencido',
  severe: 'uso severo: un factor, o un intervalo como "100 h"',
  wrench: 'la escala de la llave: margen y paso entre marcas',
  accuracy:
    'error de la llave, en por ciento de la lectura, o "2% of full scale" (por defecto: el error admisible de ISO 6789)',
  crowfoot:
    'para una pata de gallo en línea con la llave: distancia de su cuadrado al centro de la fijación; necesita --lever',
  lever: 'distancia del cuadrado de la llave al centro de la empuñadura',
  vessel: 'la jarra: marca más alta y paso entre marcas',
  kv40: 'viscosidad del aceite a 40 °C en mm²/s (cSt), de su ficha técnica',
  kv100: 'lo mismo a 100 °C',
  at: 'temperatura del aceite',
  hose: 'diámetro interior y longitud de la manguera',
  drop: 'altura del fondo del embudo sobre el extremo inferior de la manguera (por defecto: cuelga recta)',
  funnel: 'diámetro superior y profundidad del embudo; un cono salvo que el texto empiece por "cylinder"',
  manual: 'el aceite que permite el manual',
  'yellow-metal': 'si el aceite toca bronce o latón (por defecto: no se sabe)',
  additive: 'si la etiqueta nombra un aditivo de deslizamiento limitado (por defecto: no se sabe)',
  thread: 'la rosca del tapón',
}
