import type { CliWords } from '../cliWords.js'

const FINDINGS_EXIT_CODES =
  '0 ningún aviso del nivel o superior, 1 avisos, 2 error de uso o un archivo que no se puede leer.'
const ANSWER_EXIT_CODES = '0 sí, 1 no o no se sabe, 2 error de uso.'
const TODAY = '(por defecto: el reloj de este ordenador)'

/** The help of each command in Spanish. */
export const commands: CliWords['commands'] = {
  new: {
    summary: 'escribir una hoja de datos, un historial, una caja de herramientas o existencias por rellenar',
    help: `Escribe un documento para rellenar, como YAML con un ejemplo para cada valor. Incluso sin rellenar no tiene errores y se puede planificar:
los valores que faltan son "not stated". Indicar la hoja de un historial con --sheet. Con --from, reescribe una hoja completa en notación
corta. Una hoja puede ser una tabla, una fila por cárter y abertura: --format csv o --out sheet.csv la escribe, --from sheet.csv la lee.`,
    options: {
      sheet: 'la hoja de datos del historial',
      out: 'archivo de salida, .yaml, .json o .csv; un archivo existente no se sustituye (por defecto: salida estándar)',
    },
    exitCodes: '0 escrito, 1 la hoja indicada tiene errores, 2 error de uso, o el archivo ya existe.',
  },
  check: {
    summary: 'comunicar los errores de documentos',
    help: `Lee documentos e imprime un aviso por cada error. También se leen las subcarpetas, cada una como un conjunto propio; no las carpetas
ocultas, los enlaces ni node_modules. Las últimas líneas dan el número de documentos y carpetas leídos y omitidos (en la salida de errores
con --format json o sarif). Un error en tres archivos o más se imprime una vez, con sus archivos.
Con --fix corrige la grafía de claves, nombres y datos y el orden de dos datos, donde solo un cambio es probable y no resulta ningún aviso
nuevo. Historiales, registros y procedimientos nunca se cambian. Comparar cada cambio con el manual.
Con --write-baseline acepta todos los avisos de hoy; con --baseline comunica después solo los nuevos.`,
    options: { today: `comunica lecturas y registros posteriores a este día ${TODAY}` },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  due: {
    summary: 'listar los servicios pendientes, con sus razones',
    help: `Imprime cada servicio de cada máquina con su veredicto y razones. Con --every no hace falta documento: dice si un servicio está
pendiente, a partir del intervalo del manual y de las lecturas en el último servicio y ahora.

Para flotas: JSON Lines de un archivo o de la entrada estándar (-), con un historial por línea. Imprime una línea de JSON por cada línea,
con memoria constante. Para una línea que no se puede leer imprime avisos y sigue; el código de salida es entonces 1. Con --brief o
--format csv imprime una línea corta por servicio, con --format summary solo el número de máquinas por día y lugar.
Sin hoja de datos, cada línea es una fila plana, un servicio con sus límites:
  {"id":"m-1","lastDate":"2023-04-06","lastHours":310,"hours":402,"hoursDate":"2023-10-01","everyHours":100,"everyMonths":6}
Un campo mal escrito da un aviso y el veredicto "cannot tell"; las demás columnas se ignoran y se listan al final.`,
    exitCodes: `0 se leyó cada documento y cada línea, 1 avisos en ellos, 2 error de uso o un archivo que no se puede leer;
con --exit-code, 3 o 4 en lugar de 0. Con --every: 0 al día, 1 pendiente o no se sabe; con --exit-code, 3 o 4 en lugar de 1.`,
  },
  plan: {
    summary:
      'planificar una visita: qué está pendiente, aceite, juntas que comprar, ajustes, qué falta; con --full todos los datos y pasos',
    help: `Planifica una visita a una máquina e imprime la respuesta: qué está pendiente, aceite, ajustes, qué falta. Con --full, imprime el plan
entero. Necesita un historial con su hoja de datos; caja de herramientas y existencias son opcionales.`,
    exitCodes: FINDINGS_EXIT_CODES,
  },
  card: {
    summary: 'escribir el plan como ficha en --out: HTML, Markdown, texto y una ficha corta',
    help: `Escribe la visita como ficha: <machine>.html, <machine>.md, <machine>.txt y <machine>-short.html.
Con --paper wall escribe una ficha de pared sin fecha, <sheet>-<variant>-wall.html y .md, para cada variante de cada hoja entre los
archivos, o con --machine para la máquina de ese historial. Una caja de herramientas da los ajustes, unas existencias la viscosidad de
sus aceites. Los demás papeles tienen una página, como HTML, Markdown y texto: la etiqueta del próximo servicio (62 x 29 mm, en ambas
orientaciones) y la carta de lubricación de cada máquina, el registro en blanco de su visita, la lista de recogida de todas las máquinas
del día, y las diferencias entre las variantes de cada hoja.`,
    exitCodes: FINDINGS_EXIT_CODES,
  },
  cues: {
    summary: 'imprimir el guion de una visita para quien presenta, o escribirlo con subtítulos',
    help: `Imprime un guion, escena por escena: qué mostrar, qué decir y qué tener en pantalla. Después lista las tomas en el orden de rodaje. Con
--out escribe <machine>-cues.html, .md y .txt, y subtítulos WebVTT: un archivo con --starts, si no uno por escena.`,
    options: { out: 'carpeta para el guion y los subtítulos (se crea si falta)' },
  },
  kits: {
    summary:
      'listar aceite, juntas y herramientas por máquina con servicio pendiente, y un pedido para todas',
    help: `Imprime el aceite, las juntas y las herramientas para cada máquina con un servicio pendiente, y la lista de pedido: aceite en los
envases de las existencias (un número 0 indica un tamaño que se vende), con lo que sobra; sin repuestos. Con varios días o furgonetas,
ambos también por día (en que vence el primer servicio) y furgoneta (la caja de herramientas, si no las existencias o la carpeta).
Necesita historiales y sus hojas de datos.`,
  },
  procedure: {
    summary:
      'escribir los pasos de una visita, para editarlos y usarlos en plan, card y cues con --procedure',
    help: `Escribe los pasos construidos como YAML, con cada línea de la ficha como comentario sobre sus pasos. Necesita un historial con su hoja,
o una hoja y --service. Con --from, pone un procedimiento anterior al día de la revisión de la hoja: se conservan su orden,
identificadores y notas, y solo se corrigen los errores. Lista pasos quitados, añadidos y movidos, notas sin paso y, si la revisión
anterior de la hoja está entre los archivos, los datos que cambiaron.`,
    options: {
      out: 'archivo de salida, .yaml o .json; un archivo existente no se sustituye (por defecto: salida estándar)',
      from: 'procedimiento anterior que poner al día de la revisión de la hoja',
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  repair: {
    summary: 'corregir un procedimiento, los errores peligrosos primero',
    help: `Corrige un procedimiento con los mínimos cambios, o lo rehace en el orden usual si hay demasiados errores; se conservan notas y demás
pasos. Imprime primero los errores peligrosos, luego los otros, cada cambio con los pasos vecinos, y los errores que quedan. Con --out,
escribe también el procedimiento corregido.`,
    options: { out: 'archivo para el procedimiento corregido' },
  },
  compare: {
    summary: 'comparar dos hojas, dos procedimientos, o las variantes de una hoja',
    help: `Compara dos hojas dato por dato, dos procedimientos por su efecto, o las variantes de una hoja.
El código de salida es 1 si difieren.`,
  },
  record: {
    summary: 'añadir un registro de servicio a su historial',
    help: `Añade un registro del trabajo hecho, errores incluidos, al historial de su máquina, y escribe el historial en --out; sin --out solo
comprueba. Comunica errores, trabajo que no cuenta como hecho y averías pendientes: no usar la máquina hasta que un registro con
"corrects" las cierre. Rechaza solo un registro que no se puede leer o es de otra máquina. --from-plan escribe un registro de la visita
planificada: sustituir cada ?, y corregir las entradas que difieran del trabajo. --top-up añade el aceite repuesto entre servicios, e
indica cuánto aceite pierde el cárter.`,
    options: {
      out: 'archivo para el historial con el nuevo registro o reposición, o para el registro de un plan',
      at: 'con --top-up: identificador del cárter, por ejemplo front o "hub left"',
      service: 'con --from-plan: incluir este servicio, pendiente o no; se puede repetir',
      ambient: 'con --from-plan: temperatura ambiente, para elegir el aceite',
      today: `comunica un registro posterior a este día ${TODAY}`,
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  history: {
    summary: 'imprimir registros y reposiciones de una máquina, con correcciones, averías y aceite perdido',
    help: `Imprime las averías pendientes y los cárteres que pierden aceite, luego cada registro del historial con su trabajo, el trabajo que no
cuenta (y por qué) y las correcciones, y las reposiciones. Con --format csv imprime las lecturas como tabla, que import lee.`,
    options: { today: `comunica un registro posterior a este día ${TODAY}` },
  },
  slip: {
    summary:
      'escribir el informe para el dueño tras una visita: averías, trabajo, hallazgos y próximos servicios',
    help: `Imprime una página para el dueño: averías pendientes, luego trabajo hecho, hallazgos, trabajo no hecho, la próxima fecha de cada
servicio, y muestras de aceite sin resultado. Las correcciones se aplican. Se incluye un registro de los archivos que aún no está en el
historial.`,
    options: {
      out: 'archivo de salida, .txt, .md, .html o .json (por defecto: salida estándar)',
      today: `el día en que se juzgan los próximos servicios ${TODAY}`,
    },
    exitCodes:
      '0 impreso, incluso con averías pendientes, 1 un documento tiene errores, 2 error de uso o un archivo que no se puede leer.',
  },
  'used-oil': {
    summary: 'sumar el aceite usado entregado, por destinatario',
    help: `Imprime el aceite usado de todos los registros en litros: el total, por destinatario, y línea por línea. Se marcan el aceite guardado
aparte, el aceite sin recibo y las líneas sin volumen; en estas se muestra el aceite drenado, pero no se suma.`,
  },
  import: {
    summary: 'añadir lecturas de telemática (ISO/TS 15143-3) o tablas (CSV) a historiales',
    help: `Añade las horas y distancias de un fabricante (JSON según ISO/TS 15143-3) a un historial, una lectura por día. Se omiten los días que
ya tienen lectura en el historial; se añade un contador que falte. Sin --out, solo imprime el número de lecturas nuevas. Para una flota,
varios archivos (páginas) y tablas se añaden a muchos historiales, hallados por identificador, número de serie o PIN, y se escriben en
la carpeta --out. Una tabla tiene en cada fila una máquina y un día, en columnas machine, date, hours y distance [km]; la unidad está en
el nombre de la columna o en una segunda fila de cabecera. Una máquina sin historial recibe uno si la tabla tiene una columna sheet
(también revision, name, variant, serial, commissioned). Una columna entry, en notación corta, añade registros. Con una celda mala no se
escribe nada.`,
    options: {
      out: 'archivo para el historial con las lecturas; para una flota, carpeta para los historiales',
      today: `comunica lecturas posteriores a este día ${TODAY}`,
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  convert: {
    summary: 'convertir una cantidad a otra unidad, bien redondeada',
    help: `Lee una cantidad, tolerancia o margen como se suele escribir, y lo imprime en otra unidad: el número bien redondeado, y el dato para
imprimir junto al original (los límites se redondean hacia dentro). Un texto ambiguo es un error que lista sus significados posibles.`,
  },
  torque: {
    summary: 'hallar el ajuste de una llave dinamométrica y el par real',
    help: 'Imprime la marca que ajustar en esta llave, el par real con el error de la llave, y las razones.',
    exitCodes: ANSWER_EXIT_CODES,
  },
  fill: {
    summary: 'hallar las marcas de una jarra para un llenado',
    help: 'Imprime el número de vertidos, la marca de cada uno, y el error.',
    options: {
      tolerance:
        'error admisible del llenado en por ciento (por defecto: la tolerancia de la cantidad, si la tiene)',
    },
    exitCodes: ANSWER_EXIT_CODES,
  },
  pour: {
    summary: 'hallar cuánto tarda el aceite en pasar por un embudo y una manguera',
    help: `Imprime cuánto tarda en verterse el llenado. El grado de un aceite no da su viscosidad en frío: tomar las dos viscosidades de su ficha
técnica.`,
    exitCodes: ANSWER_EXIT_CODES,
  },
  meets: {
    summary: 'hallar si un aceite cumple los requisitos del manual',
    help: 'Imprime si el manual permite un aceite, según su etiqueta. Escribir un aceite con dos categorías como "80W-90 GL-4/GL-5".',
    options: {
      ambient: 'temperatura ambiente, si el manual limita el aceite a un margen (por defecto: no se sabe)',
    },
    exitCodes: '0 sí, 1 no, no se sabe, o preguntar al fabricante, 2 error de uso.',
  },
  washer: {
    summary: 'hallar si una arandela encaja en la rosca de un tapón',
    help: 'Compara el diámetro interior, el diámetro exterior y el grosor de una arandela de sellado con la rosca.',
    exitCodes: ANSWER_EXIT_CODES,
  },
  schema: {
    summary: 'imprimir el JSON Schema de una clase de documento o resultado',
    help: `Imprime el JSON Schema de un documento: spec-sheet, machine-log, toolbox, stock, procedure o service-record; o de un resultado:
visit-plan, due-line, service-card o finding.`,
  },
  completion: {
    summary: 'imprimir un script de autocompletado para bash, zsh o fish',
    help: `Imprime un script que completa órdenes, opciones y archivos. Cargarlo en el archivo de inicio del shell:
  bash: source <(drivetrain-service completion bash)
  zsh:  source <(drivetrain-service completion zsh)
  fish: drivetrain-service completion fish | source`,
  },
}
