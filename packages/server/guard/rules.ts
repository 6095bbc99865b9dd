import type { Role } from '@fettle/store/contract/people.ts';

/** The least that somebody must be to use a route: nobody in particular, or an account with a role. */
export type Least = 'anyone' | Role;

/** What each route demands, by method and path as it is registered. A route that is not here is for technicians. */
export const rules: Readonly<Record<string, Least>> = {
  // Pages
  'GET /': 'reader',
  'GET /jobs/:number{[1-9][0-9]{0,8}}': 'reader',
  'GET /jobs/:number{[1-9][0-9]{0,8}}/:part{[a-z-]+}': 'reader',
  'GET /take-in': 'reader',
  'GET /shelf': 'reader',
  'GET /reckoner': 'reader',
  'GET /reckoner/:id{[a-z0-9-]+}': 'reader',
  'GET /settings': 'reader',
  'GET /plain': 'reader',
  'GET /plain/jobs/:number': 'reader',
  'GET /:file': 'reader',
  'GET /assets/fettle.css': 'anyone',
  'GET /assets/*': 'anyone',
  'GET /sign-in': 'anyone',
  'POST /sign-in': 'anyone',
  'POST /sign-out': 'anyone',

  // The owner's sheet: the link is what lets in
  'GET /owner/:token': 'anyone',
  'GET /owner/:token/drawing': 'anyone',
  'GET /owner/:token/write-up/:name': 'anyone',
  'GET /owner/:token/reminders.ics': 'anyone',
  'POST /owner/:token/readings': 'anyone',
  'GET /api/owner/:token': 'anyone',
  'POST /api/owner/:token/readings': 'anyone',

  // People
  'GET /api/session': 'anyone',
  'POST /api/session': 'anyone',
  'DELETE /api/session': 'anyone',
  'POST /api/session/password': 'reader',
  'GET /api/accounts': 'technician',
  'POST /api/accounts': 'technician',
  'PATCH /api/accounts/:name': 'technician',
  'GET /api/log': 'technician',

  // About the server
  'GET /api/health': 'reader',
  'GET /api/openapi.json': 'reader',

  // Jobs
  'GET /api/jobs': 'reader',
  'POST /api/jobs': 'helper',
  'GET /api/jobs/:number': 'reader',
  'PUT /api/jobs/:number': 'helper',
  'DELETE /api/jobs/:number': 'helper',
  'POST /api/jobs/:number/bring-back': 'helper',
  'GET /api/jobs/:number/revisions': 'reader',
  'GET /api/jobs/:number/revisions/:revision': 'reader',
  'POST /api/jobs/:number/go-back': 'helper',
  'GET /api/jobs/:number/assessment': 'reader',
  'GET /api/jobs/:number/forecast': 'reader',
  'GET /api/jobs/:number/drawing': 'reader',
  'GET /api/jobs/:number/write-up': 'reader',
  'GET /api/jobs/:number/write-up/:name': 'reader',
  'GET /api/tags': 'reader',

  // Work
  'POST /api/jobs/:number/plans': 'helper',
  'GET /api/work': 'reader',
  'GET /api/work/:id': 'reader',
  'GET /api/work/:id/result': 'reader',
  'GET /api/work/:id/events': 'reader',
  'DELETE /api/work/:id': 'helper',

  // Photographs, readings, reminders
  'GET /api/jobs/:number/attachments': 'reader',
  'POST /api/jobs/:number/attachments': 'helper',
  'GET /api/jobs/:number/attachments/:id': 'reader',
  'GET /api/jobs/:number/attachments/:id/thumbnail': 'reader',
  'PATCH /api/jobs/:number/attachments/:id': 'helper',
  'DELETE /api/jobs/:number/attachments/:id': 'helper',
  'GET /api/jobs/:number/readings': 'reader',
  'POST /api/jobs/:number/readings': 'helper',
  'DELETE /api/jobs/:number/readings/:id': 'helper',
  'GET /api/jobs/:number/reminders.ics': 'reader',

  // Links for owners
  'GET /api/jobs/:number/owner-links': 'technician',
  'POST /api/jobs/:number/owner-links': 'technician',
  'DELETE /api/jobs/:number/owner-links/:id': 'technician',

  // The technician's books and everything at once
  'GET /api/shelf': 'reader',
  'PUT /api/shelf': 'technician',
  'GET /api/settings': 'reader',
  'PUT /api/settings': 'technician',
  'GET /api/export': 'technician',
};

const ranks: Readonly<Record<Least, number>> = { anyone: 0, reader: 1, helper: 2, technician: 3 };

/** Whether a role is enough. */
export const isEnough = (role: Role, least: Least): boolean => ranks[role] >= ranks[least];
