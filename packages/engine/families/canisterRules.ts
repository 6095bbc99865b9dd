/** What must never be done to any closed canister. */
export const canisterRules = {
  uncutHousing:
    'Never cut the housing wall, the face where the head seals, the hose ports or the motor chamber.',
  openIntake: 'Never throttle the intake; slow the filter at the outlet only.',
} as const;

/** What may be done to the hoses of any closed canister. */
export const canisterAlterations = ['hose-bore', 'shorten-hose', 'lower-outlet', 'siphon-hole'] as const;
