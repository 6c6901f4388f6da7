/** 0 no, 1 yes. */
export type YesNo = 0 | 1;
