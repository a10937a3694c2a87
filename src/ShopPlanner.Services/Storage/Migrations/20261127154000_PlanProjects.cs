using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class PlanProjects : Migration
    {
        // The column held the ids of a plan's projects in small letters, parted by one space each. A column is dropped by the
        // statement itself: the tool would build the table anew, outside the transaction.
        private const string Divide = """
            WITH RECURSIVE "Ids" ("PlanId", "Position", "Rest") AS (
                SELECT "Id", 0, "Projects" FROM "Plans" WHERE "Projects" <> ''
                UNION ALL
                SELECT "PlanId", "Position" + 1, substr("Rest", 38) FROM "Ids" WHERE length("Rest") > 37
            )
            INSERT OR IGNORE INTO "PlanProjects" ("PlanId", "ProjectId", "Position")
            SELECT "Ids"."PlanId", "Projects"."Id", "Ids"."Position"
            FROM "Ids" JOIN "Projects" ON "Projects"."Id" = upper(substr("Ids"."Rest", 1, 36))
            ORDER BY "Ids"."Position";
            ALTER TABLE "Plans" DROP COLUMN "Projects";
            """;

        private const string Gather = """
            UPDATE "Plans" SET "Projects" = coalesce((
                SELECT group_concat(lower("ProjectId"), ' ' ORDER BY "Position")
                FROM "PlanProjects" WHERE "PlanProjects"."PlanId" = "Plans"."Id"
            ), '');
            """;

        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "PlanProjects",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ProjectId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanProjects", x => new { x.PlanId, x.ProjectId });
                    table.ForeignKey(
                        name: "FK_PlanProjects_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_PlanProjects_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );
            migrationBuilder.CreateIndex(name: "IX_PlanProjects_ProjectId", table: "PlanProjects", column: "ProjectId");
            migrationBuilder.Sql(Divide);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(name: "Projects", table: "Plans", type: "TEXT", nullable: false, defaultValue: "");
            migrationBuilder.Sql(Gather);
            migrationBuilder.DropTable(name: "PlanProjects");
        }
    }
}
