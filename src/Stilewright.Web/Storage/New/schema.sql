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

BEGIN TRANSACTION;
ALTER TABLE "attempts" ADD "Unexplained" INTEGER NOT NULL DEFAULT 0;

UPDATE "attempts" SET "Unexplained" = 1 WHERE "RightFigures" < "AllFigures"
AND NOT EXISTS (SELECT 1 FROM "attempt_causes" WHERE "attempt_causes"."AttemptKey" = "attempts"."Key");

CREATE TABLE "exercises" (
    "Key" INTEGER NOT NULL CONSTRAINT "PK_exercises" PRIMARY KEY AUTOINCREMENT,
    "CourseKey" INTEGER NOT NULL,
    "AuthorId" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "Sheet" TEXT NOT NULL,
    "Level" TEXT NOT NULL,
    "LevelNumber" INTEGER NULL,
    "Bench" INTEGER NOT NULL,
    "Unit" TEXT NOT NULL,
    "MadeAt" TEXT NOT NULL,
    "Earned" INTEGER NOT NULL,
    "Marks" INTEGER NOT NULL,
    "RightFigures" INTEGER NOT NULL,
    "AllFigures" INTEGER NOT NULL,
    "Unexplained" INTEGER NOT NULL,
    CONSTRAINT "FK_exercises_documents_CourseKey" FOREIGN KEY ("CourseKey") REFERENCES "documents" ("Key") ON DELETE RESTRICT,
    CONSTRAINT "FK_exercises_makers_AuthorId" FOREIGN KEY ("AuthorId") REFERENCES "makers" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "exercise_causes" (
    "Key" INTEGER NOT NULL CONSTRAINT "PK_exercise_causes" PRIMARY KEY AUTOINCREMENT,
    "Kind" TEXT NOT NULL,
    "Subject" TEXT NOT NULL,
    "ExerciseKey" INTEGER NOT NULL,
    CONSTRAINT "FK_exercise_causes_exercises_ExerciseKey" FOREIGN KEY ("ExerciseKey") REFERENCES "exercises" ("Key") ON DELETE CASCADE
);

CREATE TABLE "exercise_shares" (
    "Key" INTEGER NOT NULL CONSTRAINT "PK_exercise_shares" PRIMARY KEY AUTOINCREMENT,
    "Kind" TEXT NOT NULL,
    "Asked" INTEGER NOT NULL,
    "Right" INTEGER NOT NULL,
    "ExerciseKey" INTEGER NOT NULL,
    CONSTRAINT "FK_exercise_shares_exercises_ExerciseKey" FOREIGN KEY ("ExerciseKey") REFERENCES "exercises" ("Key") ON DELETE CASCADE
);

CREATE INDEX "IX_exercise_causes_ExerciseKey" ON "exercise_causes" ("ExerciseKey");

CREATE INDEX "IX_exercise_shares_ExerciseKey" ON "exercise_shares" ("ExerciseKey");

CREATE INDEX "IX_exercises_AuthorId" ON "exercises" ("AuthorId");

CREATE UNIQUE INDEX "IX_exercises_CourseKey_AuthorId_Sheet" ON "exercises" ("CourseKey", "AuthorId", "Sheet");

INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion")
VALUES ('20261128200249_Exercises', '10.0.15');

COMMIT;

