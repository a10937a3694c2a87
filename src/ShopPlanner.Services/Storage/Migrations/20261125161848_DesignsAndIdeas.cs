using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class DesignsAndIdeas : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "IdeaSteps",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ProjectId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    WhenUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    DocumentBefore = table.Column<string>(type: "TEXT", nullable: false),
                    ChangedBefore = table.Column<string>(type: "TEXT", nullable: false),
                    DocumentAfter = table.Column<string>(type: "TEXT", nullable: false),
                    ChangedAfter = table.Column<string>(type: "TEXT", nullable: false),
                    Undone = table.Column<bool>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_IdeaSteps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_IdeaSteps_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "OwnDesigns",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    SavedUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OwnDesigns", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "ProjectIdeas",
                columns: table => new
                {
                    ProjectId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Changed = table.Column<string>(type: "TEXT", nullable: false),
                    Made = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ProjectIdeas", x => x.ProjectId);
                    table.ForeignKey(
                        name: "FK_ProjectIdeas_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateIndex(
                name: "IX_IdeaSteps_ProjectId_Number",
                table: "IdeaSteps",
                columns: new[] { "ProjectId", "Number" },
                unique: true
            );
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "IdeaSteps");

            migrationBuilder.DropTable(name: "OwnDesigns");

            migrationBuilder.DropTable(name: "ProjectIdeas");
        }
    }
}
