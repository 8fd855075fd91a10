import * as z from 'zod/mini'
import { LARGEST_COUNT, LARGEST_NUMBER } from '../../base/index.js'

// The kinds of JSON numbers in documents. All have a maximum, so that sums, products and loops end.

/** 0 or more. */
export const amount = () => z.number().check(z.minimum(0), z.maximum(LARGEST_NUMBER))

/** More than 0. */
export const positive = (largest = LARGEST_NUMBER) => z.number().check(z.positive(), z.maximum(largest))

/** Whole things: containers, bolts, wheels. */
export const count = (smallest: 0 | 1 = 0) => z.int().check(z.minimum(smallest), z.maximum(LARGEST_COUNT))
