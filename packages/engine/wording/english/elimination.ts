/** What lies behind a flow that has faded, what shows it, and what tells it. */
export const eliminationSentences: Readonly<Record<string, string>> = {
  'cause.intake-blocked': 'the intake is blocked: its strainer, or a sponge on it',
  'cause.air': 'air stands in the head',
  'cause.air-short': 'too little air reaches the lift tube: stone, line or air pump',
  'cause.impeller-fouled': 'the impeller or its well is fouled',
  'cause.impeller-worn': 'the impeller, its magnet or its shaft is worn',
  'cause.hose-film': 'a film has grown in the hoses',
  'cause.media-clogged': 'the media are clogged',
  'cause.outlet-restricted': 'the outlet is held back: a tap, a bend or blocked holes',

  'question.rattle': 'Listen, with a hand on the housing: does it rattle?',
  'question.growl': 'Listen: does the pump growl, as one that gets too little water?',
  'question.gurgle': 'Listen: does it gurgle?',
  'question.bubbles': 'Look at the outlet: does it spit bubbles?',
  'question.few-bubbles': 'Look into the lift tube: do fewer bubbles rise than they used to?',
  'question.covered-intake': 'Look at the intake in the tank: is it covered with plants, snails or slime?',
  'question.brown-hoses': 'Look through the hoses against a lamp: are they brown inside?',
  'question.bent-hose':
    'Follow the outlet: is a tap half shut, a hose bent, or a hole of the spray bar blocked?',
  'question.shutoff':
    'Raise the end of the outlet hose over the tank until the flow stops, for a minute at most, and measure its height over the water.',

  'trial.clear-intake':
    'Pull the plug, clear the intake of all that sits on and in it, and measure the flow.',
  'trial.open-outlet':
    'Open the taps, straighten the hoses, clear the holes of the spray bar, and measure the flow.',
  'trial.let-air-out':
    'Top up the tank, pull the plug, tilt the housing until no more air comes, start it, and measure the flow.',
  'trial.give-air':
    'Pull the plug of the air pump, clean or change the air stone, see that its line is open and has a check valve, and measure the flow.',
  'trial.clean-impeller':
    'Pull the plug, shut any taps, clean the impeller and its well, and measure the flow.',
  'trial.new-impeller':
    'Pull the plug, shut any taps, put in an impeller with a shaft that is known to be sound, and measure the flow.',
  'trial.brush-hoses': 'Pull the plug, shut any taps, brush the hoses over a bucket, and measure the flow.',
  'trial.rinse-media':
    'Pull the plug, shut any taps, rinse the media that catch dirt in tank water, never all media at once, and measure the flow.',

  'faded.not.computed':
    'No fading can be told: {share} of what is computed flows, which is within the doubt of that figure.',
  'faded.not': 'The flow has not faded: {share} of what it was is left.',
  'faded.yes': '{share} of the flow is left: {now} of {before}.',
  'faded.back': 'The flow has come back: {share} of what it was.',
  'faded.chief': 'Most likely {cause}.',
  'faded.chief-of-two': 'Two causes are about as likely: {cause}; or {other}.',
  'faded.was': 'It was most likely this: {cause}.',
  'faded.computed-before': 'What it was is computed for clean media, for nobody measured it.',
  'faded.unexplained':
    'None of these causes, alone or together, comes near to what was measured: look at the readings again, or for something that is not on the list.',
  'faded.few':
    'Few sets of causes go with all readings: take the shares for what they are, a handful of cases.',
  'faded.from-memory':
    'The shares start from how often each cause is met, which is from memory, and are moved by the readings.',
};
