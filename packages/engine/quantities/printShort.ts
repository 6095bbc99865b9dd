/** A share, 0 to 1, as `12 %`, two figures. */
export const printShare = (value: number): string => {
  const percent = 100 * value;
  if (percent === 0) return '0 %';
  if (Math.abs(percent) < 0.1) return '< 0.1 %';
  return `${Number(percent.toPrecision(2))} %`;
};

/** A time in the pores of media, s, as `12 s`: two figures are as many as it is known to. */
export const printContact = (timeS: number): string => `${Number(timeS.toPrecision(2))} s`;
