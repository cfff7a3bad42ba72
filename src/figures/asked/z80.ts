/** Standard errors on either side of the middle that hold 80 of 100. */
export const Z80 = 1.2816
