CREATE TABLE IF NOT EXISTS "__EFMigrationsHistory" (
    "MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY,
    "ProductVersion" TEXT NOT NULL
);

BEGIN TRANSACTION;
CREATE TABLE "documents" (
    "Key" INTEGER NOT NULL CONSTRAINT "PK_documents" PRIMARY KEY AUTOINCREMENT,
    "Kind" TEXT NOT NULL,
    "RecordId" TEXT NOT NULL,
    "CourseKey" INTEGER NULL,
    "Head" INTEGER NOT NULL,
    "IsArchived" INTEGER NOT NULL,
    "KeptOnStandard" INTEGER NULL,
    CONSTRAINT "FK_documents_documents_CourseKey" FOREIGN KEY ("CourseKey") REFERENCES "documents" ("Key") ON DELETE RESTRICT
);

CREATE TABLE "makers" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_makers" PRIMARY KEY,
    "Name" TEXT NOT NULL,
    "FirstSeenAt" TEXT NOT NULL
);

CREATE TABLE "handed_out" (
    "Key" INTEGER NOT NULL CONSTRAINT "PK_handed_out" PRIMARY KEY AUTOINCREMENT,
    "CourseKey" INTEGER NOT NULL,
    "MadeAt" TEXT NOT NULL,
    "AuthorId" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "FormatVersion" INTEGER NOT NULL,
    "Json" TEXT NOT NULL,
    CONSTRAINT "FK_handed_out_documents_CourseKey" FOREIGN KEY ("CourseKey") REFERENCES "documents" ("Key") ON DELETE RESTRICT,
    CONSTRAINT "FK_handed_out_makers_AuthorId" FOREIGN KEY ("AuthorId") REFERENCES "makers" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "revisions" (
    "DocumentKey" INTEGER NOT NULL,
    "Number" INTEGER NOT NULL,
    "AuthorId" TEXT NOT NULL,
    "MadeAt" TEXT NOT NULL,
    "FormatVersion" INTEGER NOT NULL,
    "ProgramVersion" TEXT NOT NULL,
    "Json" TEXT NOT NULL,
    "Changes" TEXT NOT NULL,
    "BasedOn" INTEGER NOT NULL,
    "Cause" TEXT NOT NULL,
    "Of" INTEGER NULL,
    CONSTRAINT "PK_revisions" PRIMARY KEY ("DocumentKey", "Number"),
    CONSTRAINT "FK_revisions_documents_DocumentKey" FOREIGN KEY ("DocumentKey") REFERENCES "documents" ("Key") ON DELETE RESTRICT,
    CONSTRAINT "FK_revisions_makers_AuthorId" FOREIGN KEY ("AuthorId") REFERENCES "makers" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_documents_CourseKey" ON "documents" ("CourseKey");

CREATE UNIQUE INDEX "IX_documents_Kind_CourseKey_RecordId" ON "documents" ("Kind", "CourseKey", "RecordId");

CREATE INDEX "IX_handed_out_AuthorId" ON "handed_out" ("AuthorId");

CREATE INDEX "IX_handed_out_CourseKey" ON "handed_out" ("CourseKey");

CREATE INDEX "IX_revisions_AuthorId" ON "revisions" ("AuthorId");

INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion")
VALUES ('20261128140206_Begin', '10.0.15');

COMMIT;

BEGIN TRANSACTION;
CREATE TABLE "attempts" (
    "Key" INTEGER NOT NULL CONSTRAINT "PK_attempts" PRIMARY KEY AUTOINCREMENT,
    "CourseKey" INTEGER NOT NULL,
    "AuthorId" TEXT NOT NULL,
    "ProjectId" TEXT NOT NULL,
    "Bench" INTEGER NOT NULL,
    "Leaf" TEXT NULL,
    "MadeAt" TEXT NOT NULL,
    "Stage" TEXT NOT NULL,
    "RightFigures" INTEGER NOT NULL,
    "AllFigures" INTEGER NOT NULL,
    "IsRight" INTEGER NOT NULL,
    CONSTRAINT "FK_attempts_documents_CourseKey" FOREIGN KEY ("CourseKey") REFERENCES "documents" ("Key") ON DELETE RESTRICT,
    CONSTRAINT "FK_attempts_makers_AuthorId" FOREIGN KEY ("AuthorId") REFERENCES "makers" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "tellings" (
    "CourseKey" INTEGER NOT NULL CONSTRAINT "PK_tellings" PRIMARY KEY,
    "Most" TEXT NOT NULL,
    CONSTRAINT "FK_tellings_documents_CourseKey" FOREIGN KEY ("CourseKey") REFERENCES "documents" ("Key") ON DELETE RESTRICT
);

CREATE TABLE "attempt_causes" (
    "Key" INTEGER NOT NULL CONSTRAINT "PK_attempt_causes" PRIMARY KEY AUTOINCREMENT,
    "Kind" TEXT NOT NULL,
    "Subject" TEXT NOT NULL,
    "AttemptKey" INTEGER NOT NULL,
    CONSTRAINT "FK_attempt_causes_attempts_AttemptKey" FOREIGN KEY ("AttemptKey") REFERENCES "attempts" ("Key") ON DELETE CASCADE
);

CREATE INDEX "IX_attempt_causes_AttemptKey" ON "attempt_causes" ("AttemptKey");

CREATE INDEX "IX_attempts_AuthorId" ON "attempts" ("AuthorId");

CREATE INDEX "IX_attempts_CourseKey_AuthorId" ON "attempts" ("CourseKey", "AuthorId");

INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion")
VALUES ('20261128175320_Attempts', '10.0.15');

COMMIT;

