// Snapshots and colour levels must not depend on the machine that runs the tests.
delete process.env['CI'];
delete process.env['NO_COLOR'];
