const DAY_S = 86_400;

/** A span of days or hours, s, as `59 days`, `12 hours`: two figures are more than a cleaning interval is known to. */
export const printSpan = (timeS: number): string => {
  const [count, unit] = timeS < DAY_S ? [timeS / 3600, 'hour'] : [timeS / DAY_S, 'day'];
  const shown = Number(count.toPrecision(2));
  return `${Math.abs(shown) >= 1000 ? shown.toLocaleString('en-GB') : shown} ${unit}${shown === 1 ? '' : 's'}`;
};

/** The day on which packings are compared, s since every bed was cleaned, as `day 60`. */
export const printDay = (timeS: number): string => `day ${Number((timeS / DAY_S).toPrecision(3))}`;

/** A share, 0 to 1, as `12 %`, two figures. */
export const printShare = (value: number): string => {
  const percent = 100 * value;
  if (percent === 0) return '0 %';
  if (Math.abs(percent) < 0.1) return '< 0.1 %';
  return `${Number(percent.toPrecision(2))} %`;
};

/** A time in the pores of media, s, as `12 s`: two figures are as many as it is known to. */
export const printContact = (timeS: number): string => `${Number(timeS.toPrecision(2))} s`;
