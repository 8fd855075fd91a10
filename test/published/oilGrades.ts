import { published } from '../support/published.js'

/** Grade, mm²/s at 100 °C (minimum, and the maximum, which is outside the grade), °C of the cold limit. */
export const J306_2019 = published(
  {
    room: 'oil',
    source: 'SAE J306, gear oil grades',
    edition: '2019',
    place: 'charts of three lubricant companies, which agree',
    read: 'where it is quoted',
    agrees: 'exactly',
    values: (row) => row.filter((cell) => typeof cell === 'number').length,
  },
  [
    ['70W', 3.8, undefined, -55],
    ['75W', 3.8, undefined, -40],
    ['80W', 8.5, undefined, -26],
    ['85W', 11, undefined, -12],
    ['65', 3.8, 5, undefined],
    ['70', 5, 6.5, undefined],
    ['75', 6.5, 8.5, undefined],
    ['80', 8.5, 11, undefined],
    ['85', 11, 13.5, undefined],
    ['90', 13.5, 18.5, undefined],
    ['110', 18.5, 24, undefined],
    ['140', 24, 32.5, undefined],
    ['190', 32.5, 41, undefined],
    ['250', 41, undefined, undefined],
  ],
)

export const J306_2005 = published(
  {
    room: 'oil',
    source: 'SAE J306, gear oil grades',
    edition: '2005',
    place: 'a truck maker’s sheet of operating fluids, 211.0; the scope of the 2005 edition',
    read: 'where it is quoted',
    agrees: 'exactly',
    values: (row) => row.filter((cell) => typeof cell === 'number').length,
  },
  [
    ['70W', 4.1, undefined, -55],
    ['75W', 4.1, undefined, -40],
    ['80W', 7, undefined, -26],
    ['85W', 11, undefined, -12],
    ['80', 7, 11, undefined],
    ['85', 11, 13.5, undefined],
    ['90', 13.5, 18.5, undefined],
    ['110', 18.5, 24, undefined],
    ['140', 24, 32.5, undefined],
    ['190', 32.5, 41, undefined],
    ['250', 41, undefined, undefined],
  ],
)

/** 90, 140 and 250 were wider. */
export const J306_BEFORE_2005 = published(
  {
    room: 'oil',
    source: 'SAE J306, gear oil grades',
    edition: 'before 2005',
    place: 'a lubricant company’s history of the grades',
    read: 'where it is quoted',
    agrees: 'exactly',
    values: (row) => row.filter((cell) => typeof cell === 'number').length,
  },
  [
    ['90', 13.5, 24, undefined],
    ['140', 24, 41, undefined],
    ['250', 41, undefined, undefined],
  ],
)

/** Grade, mm²/s at 100 °C. */
export const J300 = published(
  {
    room: 'oil',
    source: 'SAE J300, engine oil grades used in gearcases',
    edition: 'since 2013',
    place: 'lubricant companies’ charts',
    read: 'where it is quoted',
    agrees: 'exactly',
    values: (row) => row.filter((cell) => typeof cell === 'number').length,
  },
  [
    ['0W', 3.8, undefined],
    ['5W', 3.8, undefined],
    ['10W', 4.1, undefined],
    ['15W', 5.6, undefined],
    ['20W', 5.6, undefined],
    ['25W', 9.3, undefined],
    ['8', 4, 6.1],
    ['16', 6.1, 8.2],
    ['20', 6.9, 9.3],
    ['30', 9.3, 12.5],
    ['40', 12.5, 16.3],
    ['50', 16.3, 21.9],
    ['60', 21.9, 26.1],
  ],
)

/** Midpoint ±10 % at 40 °C, limits as printed, both inside the grade. */
export const ISO_3448 = published(
  {
    room: 'oil',
    source: 'ISO 3448, viscosity grades',
    edition: '1992',
    place: 'lubricant companies’ charts',
    read: 'where it is quoted',
    agrees: 'exactly',
    values: () => 2,
  },
  [
    ['2', '1.98', '2.42'],
    ['3', '2.88', '3.52'],
    ['5', '4.14', '5.06'],
    ['7', '6.12', '7.48'],
    ['10', '9.00', '11.0'],
    ['15', '13.5', '16.5'],
    ['22', '19.8', '24.2'],
    ['32', '28.8', '35.2'],
    ['46', '41.4', '50.6'],
    ['68', '61.2', '74.8'],
    ['100', '90', '110'],
    ['150', '135', '165'],
    ['220', '198', '242'],
    ['320', '288', '352'],
    ['460', '414', '506'],
    ['680', '612', '748'],
    ['1000', '900', '1100'],
  ],
)
