import type { TranslatedWords } from '../cliWords.js'
import { answers } from './answers.js'
import { blanks } from './blanks.js'
import { commands } from './commands.js'
import { joinOr } from './count.js'
import { errors } from './errors.js'
import { keys } from './keys.js'
import { options } from './options.js'
import { reports } from './reports.js'
import { yamlProblems } from './yamlProblems.js'

/** The words of the command line in Spanish; not reviewed by a speaker who knows the trade. */
export const es: TranslatedWords = {
  language: 'es',
  help: {
    title: 'drivetrain-service: planifica cambios de aceite de transmisión según una hoja de datos',
    usage: 'Uso:',
    options: 'Opciones',
    example: 'Ejemplo:',
    exitCode: 'Código de salida:',
    footer: `Los archivos son JSON o YAML; - es la entrada estándar. Varios archivos son un conjunto: un historial halla en él su hoja de datos por
identificador y revisión. Cada carpeta es un conjunto propio. Los patrones (*, ? y **) también valen entre comillas; con ** los archivos
de cada carpeta forman un conjunto.
Más detalles: drivetrain-service help <orden> --language es. El manual de la máquina siempre tiene prioridad.`,
    printHelp: 'imprimir la ayuda',
    formats: ({ names }) => `${joinOr(names)} (por defecto text)`,
  },
  placeholders: {
    options: 'opciones',
    command: 'orden',
    'file or folder': 'archivo o carpeta',
    'file, folder, pattern or -': 'archivo, carpeta, patrón o -',
    'file.jsonl or -': 'archivo.jsonl o -',
    'telematics.json or table.csv': 'telemática.json o tabla.csv',
    'log or folder': 'historial o carpeta',
    file: 'archivo',
    folder: 'carpeta',
    sheet: 'hoja',
    log: 'historial',
    record: 'registro',
    toolbox: 'herramientas',
    stock: 'existencias',
    kind: 'clase',
    FILE: 'ARCHIVO',
    FOLDER: 'CARPETA',
    SHEET: 'HOJA',
    LOG: 'HISTORIAL',
    RECORD: 'REGISTRO',
    GEARCASE: 'CÁRTER',
    NAME: 'NOMBRE',
    DATE: 'FECHA',
    LEVEL: 'NIVEL',
    FORMAT: 'FORMATO',
    ID: 'ID',
    USE: 'USO',
    YEAR: 'AÑO',
    PERCENT: 'PORCENTAJE',
    WHAT: 'MEDIO',
    PAPER: 'PAPEL',
    SYSTEM: 'SISTEMA',
    NUMBER: 'NÚMERO',
    MARK: 'SIGNO',
    OLD: 'ANTERIOR',
  },
  commands,
  options,
  errors,
  reports,
  answers,
  keys,
  blanks,
  yamlProblems,
  standardInput: 'entrada estándar',
  severities: { error: 'error', warning: 'advertencia', info: 'nota' },
  dueStates: {
    overdue: 'vencido',
    due: 'pendiente',
    'cannot tell': 'no se sabe',
    'due soon': 'próximo',
    'not due': 'al día',
  },
  oilLosses: { 'no loss': 'sin pérdida', 'loses oil': 'pierde aceite', 'cannot tell': 'no se sabe' },
  oilVerdicts: { yes: 'Sí.', no: 'No.', 'cannot tell': 'No se sabe.', ask: 'Preguntar al fabricante.' },
  washerVerdicts: {
    'in the table': 'Encaja.',
    plausible: 'Encaja, por su tamaño.',
    doubtful: 'Dudoso.',
    'does not fit': 'No encaja.',
    'cannot tell': 'No se sabe.',
  },
  changes: { added: 'añadido', removed: 'quitado', changed: 'cambiado', 'source only': 'solo la fuente' },
  repairEnds: {
    done: 'No queda ningún aviso sobre los pasos.',
    rebuilt: 'No queda ningún aviso sobre los pasos. Leer todos los pasos antes de trabajar.',
    'no fix':
      'Ningún otro cambio ayuda. Corregir el resto a mano, o empezar de nuevo con la orden `procedure`.',
    effort: 'La búsqueda llegó a su límite. Corregir a mano parte del resto, y volver a usar repair.',
  },
  measures: {
    torque: 'par',
    volume: 'volumen',
    length: 'longitud',
    distance: 'distancia',
    force: 'fuerza',
    pressure: 'presión',
    temperature: 'temperatura',
    temperatureDifference: 'diferencia de temperatura',
    mass: 'masa',
    duration: 'tiempo',
    angle: 'ángulo',
    speed: 'velocidad',
    kinematicViscosity: 'viscosidad cinemática',
    dynamicViscosity: 'viscosidad dinámica',
    density: 'densidad',
  },
}
