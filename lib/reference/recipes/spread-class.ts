/**
 * Soluble solids, per cent by weight, from which amounts of one's own are still the product a process row was printed for.
 * House rule: the rows print none.
 */
export const SPREAD_CLASS_BRIX = 60;
export const BUTTER_CLASS_BRIX = 43;
