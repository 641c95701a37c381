using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Stilewright.Web.Storage.Migrations
{
    /// <inheritdoc />
    public partial class Attempts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "attempts",
                columns: table => new
                {
                    Key = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    CourseKey = table.Column<long>(type: "INTEGER", nullable: false),
                    AuthorId = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    ProjectId = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    Bench = table.Column<int>(type: "INTEGER", nullable: false),
                    Leaf = table.Column<string>(type: "TEXT", maxLength: 80, nullable: true),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", maxLength: 16, nullable: false),
                    RightFigures = table.Column<int>(type: "INTEGER", nullable: false),
                    AllFigures = table.Column<int>(type: "INTEGER", nullable: false),
                    IsRight = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_attempts", x => x.Key);
                    table.ForeignKey(
                        name: "FK_attempts_documents_CourseKey",
                        column: x => x.CourseKey,
                        principalTable: "documents",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_attempts_makers_AuthorId",
                        column: x => x.AuthorId,
                        principalTable: "makers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "tellings",
                columns: table => new
                {
                    CourseKey = table.Column<long>(type: "INTEGER", nullable: false),
                    Most = table.Column<string>(type: "TEXT", maxLength: 16, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_tellings", x => x.CourseKey);
                    table.ForeignKey(
                        name: "FK_tellings_documents_CourseKey",
                        column: x => x.CourseKey,
                        principalTable: "documents",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "attempt_causes",
                columns: table => new
                {
                    Key = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 24, nullable: false),
                    Subject = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    AttemptKey = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_attempt_causes", x => x.Key);
                    table.ForeignKey(
                        name: "FK_attempt_causes_attempts_AttemptKey",
                        column: x => x.AttemptKey,
                        principalTable: "attempts",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_attempt_causes_AttemptKey",
                table: "attempt_causes",
                column: "AttemptKey");

            migrationBuilder.CreateIndex(
                name: "IX_attempts_AuthorId",
                table: "attempts",
                column: "AuthorId");

            migrationBuilder.CreateIndex(
                name: "IX_attempts_CourseKey_AuthorId",
                table: "attempts",
                columns: new[] { "CourseKey", "AuthorId" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "attempt_causes");

            migrationBuilder.DropTable(
                name: "tellings");

            migrationBuilder.DropTable(
                name: "attempts");
        }
    }
}
