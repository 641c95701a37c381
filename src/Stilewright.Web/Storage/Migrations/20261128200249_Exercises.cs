using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Stilewright.Web.Storage.Migrations
{
    /// <inheritdoc />
    public partial class Exercises : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "Unexplained",
                table: "attempts",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            // Of lists checked before it is only known that nothing explained what was wrong.
            migrationBuilder.Sql("""
                UPDATE "attempts" SET "Unexplained" = 1 WHERE "RightFigures" < "AllFigures"
                AND NOT EXISTS (SELECT 1 FROM "attempt_causes" WHERE "attempt_causes"."AttemptKey" = "attempts"."Key");
                """);

            migrationBuilder.CreateTable(
                name: "exercises",
                columns: table => new
                {
                    Key = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    CourseKey = table.Column<long>(type: "INTEGER", nullable: false),
                    AuthorId = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 16, nullable: false),
                    Sheet = table.Column<string>(type: "TEXT", maxLength: 400, nullable: false),
                    Level = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    LevelNumber = table.Column<int>(type: "INTEGER", nullable: true),
                    Bench = table.Column<int>(type: "INTEGER", nullable: false),
                    Unit = table.Column<string>(type: "TEXT", maxLength: 16, nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Earned = table.Column<int>(type: "INTEGER", nullable: false),
                    Marks = table.Column<int>(type: "INTEGER", nullable: false),
                    RightFigures = table.Column<int>(type: "INTEGER", nullable: false),
                    AllFigures = table.Column<int>(type: "INTEGER", nullable: false),
                    Unexplained = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_exercises", x => x.Key);
                    table.ForeignKey(
                        name: "FK_exercises_documents_CourseKey",
                        column: x => x.CourseKey,
                        principalTable: "documents",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_exercises_makers_AuthorId",
                        column: x => x.AuthorId,
                        principalTable: "makers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "exercise_causes",
                columns: table => new
                {
                    Key = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 24, nullable: false),
                    Subject = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    ExerciseKey = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_exercise_causes", x => x.Key);
                    table.ForeignKey(
                        name: "FK_exercise_causes_exercises_ExerciseKey",
                        column: x => x.ExerciseKey,
                        principalTable: "exercises",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "exercise_shares",
                columns: table => new
                {
                    Key = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 24, nullable: false),
                    Asked = table.Column<int>(type: "INTEGER", nullable: false),
                    Right = table.Column<int>(type: "INTEGER", nullable: false),
                    ExerciseKey = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_exercise_shares", x => x.Key);
                    table.ForeignKey(
                        name: "FK_exercise_shares_exercises_ExerciseKey",
                        column: x => x.ExerciseKey,
                        principalTable: "exercises",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_exercise_causes_ExerciseKey",
                table: "exercise_causes",
                column: "ExerciseKey");

            migrationBuilder.CreateIndex(
                name: "IX_exercise_shares_ExerciseKey",
                table: "exercise_shares",
                column: "ExerciseKey");

            migrationBuilder.CreateIndex(
                name: "IX_exercises_AuthorId",
                table: "exercises",
                column: "AuthorId");

            migrationBuilder.CreateIndex(
                name: "IX_exercises_CourseKey_AuthorId_Sheet",
                table: "exercises",
                columns: new[] { "CourseKey", "AuthorId", "Sheet" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "exercise_causes");

            migrationBuilder.DropTable(
                name: "exercise_shares");

            migrationBuilder.DropTable(
                name: "exercises");

            migrationBuilder.DropColumn(
                name: "Unexplained",
                table: "attempts");
        }
    }
}
