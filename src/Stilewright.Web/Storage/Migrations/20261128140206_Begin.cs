using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Stilewright.Web.Storage.Migrations
{
    /// <inheritdoc />
    public partial class Begin : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "documents",
                columns: table => new
                {
                    Key = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 16, nullable: false),
                    RecordId = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    CourseKey = table.Column<long>(type: "INTEGER", nullable: true),
                    Head = table.Column<int>(type: "INTEGER", nullable: false),
                    IsArchived = table.Column<bool>(type: "INTEGER", nullable: false),
                    KeptOnStandard = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_documents", x => x.Key);
                    table.ForeignKey(
                        name: "FK_documents_documents_CourseKey",
                        column: x => x.CourseKey,
                        principalTable: "documents",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "makers",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    FirstSeenAt = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_makers", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "handed_out",
                columns: table => new
                {
                    Key = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    CourseKey = table.Column<long>(type: "INTEGER", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    AuthorId = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    What = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    FormatVersion = table.Column<int>(type: "INTEGER", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_handed_out", x => x.Key);
                    table.ForeignKey(
                        name: "FK_handed_out_documents_CourseKey",
                        column: x => x.CourseKey,
                        principalTable: "documents",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_handed_out_makers_AuthorId",
                        column: x => x.AuthorId,
                        principalTable: "makers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "revisions",
                columns: table => new
                {
                    DocumentKey = table.Column<long>(type: "INTEGER", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    AuthorId = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    FormatVersion = table.Column<int>(type: "INTEGER", nullable: false),
                    ProgramVersion = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    Changes = table.Column<string>(type: "TEXT", nullable: false),
                    BasedOn = table.Column<int>(type: "INTEGER", nullable: false),
                    Cause = table.Column<string>(type: "TEXT", maxLength: 16, nullable: false),
                    Of = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_revisions", x => new { x.DocumentKey, x.Number });
                    table.ForeignKey(
                        name: "FK_revisions_documents_DocumentKey",
                        column: x => x.DocumentKey,
                        principalTable: "documents",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_revisions_makers_AuthorId",
                        column: x => x.AuthorId,
                        principalTable: "makers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_documents_CourseKey",
                table: "documents",
                column: "CourseKey");

            migrationBuilder.CreateIndex(
                name: "IX_documents_Kind_CourseKey_RecordId",
                table: "documents",
                columns: new[] { "Kind", "CourseKey", "RecordId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_handed_out_AuthorId",
                table: "handed_out",
                column: "AuthorId");

            migrationBuilder.CreateIndex(
                name: "IX_handed_out_CourseKey",
                table: "handed_out",
                column: "CourseKey");

            migrationBuilder.CreateIndex(
                name: "IX_revisions_AuthorId",
                table: "revisions",
                column: "AuthorId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "handed_out");

            migrationBuilder.DropTable(
                name: "revisions");

            migrationBuilder.DropTable(
                name: "documents");

            migrationBuilder.DropTable(
                name: "makers");
        }
    }
}
