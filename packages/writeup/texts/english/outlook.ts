/** Sentences on the months to come: what is left of the flow, and what each way of cleaning gives. */
export const outlookSentences: Readonly<Record<string, string>> = {
  'heading.forecast': 'The months to come',
  'forecast.interval-end': 'After about {interval} (within a factor of three) {end}.',
  'forecast.only.unfed':
    'The tank is not fed, so no dirt is made, and nothing can be said of the months to come.',
  'forecast.only.caught-nothing':
    'By the models its media hold no dirt: nothing in it clogs, and the flow stays as it is clean. What hoses and pump lose over the months is not computed.',
  'forecast.only.untimed-air':
    'What its bubbles lift was computed and not timed, which is not sure enough to say what will be left of it: time it clean, and the months to come can be told.',
  'forecast.clean': 'clean',
  'forecast.on-day': 'day {day}',
  'table.forecast-months': 'What is left with nothing cleaned',
  'column.of-clean': 'of clean',
  'column.of-clean-before': 'packed as before',
  'column.least-bed': 'through the bed that loses most',
  'plot.days': 'Water by day, with nothing cleaned',
  'plot.of-clean': 'of clean',
  'plot.day-axis': 'days since every bed was cleaned',
  'plot.at-tank': 'at the tank',
  'plot.as-before': 'at the tank, packed as before',
  'plot.course': '{name}: {first} of clean on day 0, {last} on day {days}, at the least {least}.',
  'drawing.forecast': 'Day by day with nothing cleaned, against clean: at the tank 100 % are {flow}.',
  'table.forecast-patterns': 'Ways of cleaning, held against each other over half a year',
  'column.pattern': 'cleaning',
  'column.mean-flow': 'flow, on average',
  'column.least-flow': 'at the least, of clean',
  'column.work': 'days of work a year',
  'column.late': 'days late a year',
  'column.media-a-year': 'media a year',
  'pattern.never': 'never',
  'pattern.usual': 'whenever the interval is over',
  'pattern.flow': 'when {share} of the clean flow are left at the tank',
  'pattern.part.all': 'everything every {days} days',
  'pattern.part.mechanical': 'mechanical media every {days} days',
  'forecast.key':
    'Days late: the interval was over, and nothing was cleaned. Work and media are counted as they fall on whole days, so they may differ a little from the cost of a year. How long a day of work is, is not known. A rinsing is taken to leave a tenth of the dirt.',
  'forecast.uneventful': 'Ways of cleaning differ too little here to be held against each other.',
  'forecast.doubt':
    'All these days are good to a factor of three either way; which way of cleaning is better than which is surer than the figures.',

  'heading.care-pattern': 'How often',
  'care.advice.interval':
    'Clean whenever the interval is over, after about {interval}, each time what the table of the beds names for it.',
  'care.advice.work':
    'That is about {work} days of work a year and {media} of media a year, and at the least {share} of the clean flow reach the tank.',
  'care.advice.work.alone':
    'That is about {work} days of work a year, and at the least {share} of the clean flow reach the tank.',
  'care.advice.late':
    'Why not by a plain calendar: {pattern} would come to {work} days a year, but cleaning would be late on {late} days of the year.',
  'care.advice.as-well':
    'By a plain calendar, {pattern} would be never late either, with {work} days of work a year.',
  'care.advice.too-often':
    'More than once a week is more than most keep up (our own measure), so the packing wants changing rather than the calendar. {cure}',
  'care.advice.beyond':
    'By the models nothing asks for cleaning within a year: with nothing cleaned, {share} of the clean flow are left after {days} days. Clean every bed once a year all the same, and sooner where the test of the flow asks for it: what settles in corners and grows in hoses is not computed (our own choice).',
  'table.jug-months.vessel': 'What the jug should show: {given}',
  'table.jug-months.bag': 'What the bag should catch in {given}',
  'column.shown.vessel': 'filled in',
  'column.shown.bag': 'caught',
  'care.before-cleaning': 'just before a cleaning that is due',
  'care.uncleaned': 'day {day}, with nothing cleaned',
  'care.jug.hidden.pump':
    'Dirt in the media alone hardly shows in the test of the flow. Where the flow falls well below clean even so, look for something else: strainer, pipes or hoses, rotor.',
  'care.jug.hidden.air':
    'Dirt in the media alone hardly shows in the test of the flow. Where the flow falls well below clean even so, look for something else: air line, stone, air pump.',
};
